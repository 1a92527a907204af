// Written by .setup/shelf.ts (npm run generate); do not edit.
import f0 from '../../rules/camshaft/lifters-spoiled.json' with { type: 'json' }
import f1 from '../../rules/camshaft/lobes-spoiled.json' with { type: 'json' }
import f2 from '../../rules/camshaft/looked-over.json' with { type: 'json' }
import f3 from '../../rules/camshaft/properties.json' with { type: 'json' }
import f4 from '../../rules/cautions.json' with { type: 'json' }
import f5 from '../../rules/confidence.json' with { type: 'json' }
import f6 from '../../rules/engines/QL-6P.json' with { type: 'json' }
import f7 from '../../rules/engines/QL-8S.json' with { type: 'json' }
import f8 from '../../rules/guide-plate/limits.json' with { type: 'json' }
import f9 from '../../rules/guide-plate/properties.json' with { type: 'json' }
import f10 from '../../rules/guide-plate/rods-bind.json' with { type: 'json' }
import f11 from '../../rules/guide-plate/slot-play-tight.json' with { type: 'json' }
import f12 from '../../rules/guide-plate/slot-play-wide.json' with { type: 'json' }
import f13 from '../../rules/guide-plate/slot-stepped.json' with { type: 'json' }
import f14 from '../../rules/guide-plate/slot-wear.json' with { type: 'json' }
import f15 from '../../rules/guide-plate/slots-smooth.json' with { type: 'json' }
import f16 from '../../rules/guide-plate/soft-rods.json' with { type: 'json' }
import f17 from '../../rules/guide-plate/two-guides.json' with { type: 'json' }
import f18 from '../../rules/guide/bellmouth-replaced.json' with { type: 'json' }
import f19 from '../../rules/guide/bellmouth-restored.json' with { type: 'json' }
import f20 from '../../rules/guide/broken.json' with { type: 'json' }
import f21 from '../../rules/guide/bronze-dust.json' with { type: 'json' }
import f22 from '../../rules/guide/clearance-in-limit.json' with { type: 'json' }
import f23 from '../../rules/guide/fit-loose-half.json' with { type: 'json' }
import f24 from '../../rules/guide/inside-limit-noted.json' with { type: 'json' }
import f25 from '../../rules/guide/knurl-allowed.json' with { type: 'json' }
import f26 from '../../rules/guide/knurl-refused.json' with { type: 'json' }
import f27 from '../../rules/guide/limits.json' with { type: 'json' }
import f28 from '../../rules/guide/looks-sound.json' with { type: 'json' }
import f29 from '../../rules/guide/loose-in-head.json' with { type: 'json' }
import f30 from '../../rules/guide/loose-powdered-metal.json' with { type: 'json' }
import f31 from '../../rules/guide/not-too-tight.json' with { type: 'json' }
import f32 from '../../rules/guide/out-of-round-replaced.json' with { type: 'json' }
import f33 from '../../rules/guide/out-of-round-restored.json' with { type: 'json' }
import f34 from '../../rules/guide/over-new-fit.json' with { type: 'json' }
import f35 from '../../rules/guide/plug-shows-nothing.json' with { type: 'json' }
import f36 from '../../rules/guide/press-too-heavy.json' with { type: 'json' }
import f37 from '../../rules/guide/press-too-light.json' with { type: 'json' }
import f38 from '../../rules/guide/properties.json' with { type: 'json' }
import f39 from '../../rules/guide/scored-replaced.json' with { type: 'json' }
import f40 from '../../rules/guide/scored-restored.json' with { type: 'json' }
import f41 from '../../rules/guide/selective-fit.json' with { type: 'json' }
import f42 from '../../rules/guide/side-play-asks.json' with { type: 'json' }
import f43 from '../../rules/guide/side-play-light.json' with { type: 'json' }
import f44 from '../../rules/guide/too-short.json' with { type: 'json' }
import f45 from '../../rules/guide/too-tight-nitrided.json' with { type: 'json' }
import f46 from '../../rules/guide/too-tight.json' with { type: 'json' }
import f47 from '../../rules/guide/tool-shows-double.json' with { type: 'json' }
import f48 from '../../rules/guide/top-too-big.json' with { type: 'json' }
import f49 from '../../rules/guide/top-too-small.json' with { type: 'json' }
import f50 from '../../rules/guide/top-wall-thin.json' with { type: 'json' }
import f51 from '../../rules/guide/worn-replaced.json' with { type: 'json' }
import f52 from '../../rules/guide/worn-restored.json' with { type: 'json' }
import f53 from '../../rules/instruments.json' with { type: 'json' }
import f54 from '../../rules/job/bind-roomy.json' with { type: 'json' }
import f55 from '../../rules/job/cam-card-known.json' with { type: 'json' }
import f56 from '../../rules/job/cam-change-checks.json' with { type: 'json' }
import f57 from '../../rules/job/camshaft-replaced.json' with { type: 'json' }
import f58 from '../../rules/job/card-asks-springs.json' with { type: 'json' }
import f59 from '../../rules/job/crack-test-aluminium.json' with { type: 'json' }
import f60 from '../../rules/job/crack-test-iron.json' with { type: 'json' }
import f61 from '../../rules/job/drain-back-first.json' with { type: 'json' }
import f62 from '../../rules/job/flat-tappets-kept.json' with { type: 'json' }
import f63 from '../../rules/job/gas-fuel.json' with { type: 'json' }
import f64 from '../../rules/job/guide-cut-too-deep.json' with { type: 'json' }
import f65 from '../../rules/job/guide-top-cut-needed.json' with { type: 'json' }
import f66 from '../../rules/job/guide-top-cut-planned.json' with { type: 'json' }
import f67 from '../../rules/job/guide-top-for-seal.json' with { type: 'json' }
import f68 from '../../rules/job/inner-springs-bind.json' with { type: 'json' }
import f69 from '../../rules/job/inner-springs-clear-bind.json' with { type: 'json' }
import f70 from '../../rules/job/inner-too-big-for-outer.json' with { type: 'json' }
import f71 from '../../rules/job/kit-complete.json' with { type: 'json' }
import f72 from '../../rules/job/limits.json' with { type: 'json' }
import f73 from '../../rules/job/metal-known.json' with { type: 'json' }
import f74 from '../../rules/job/new-flat-tappets.json' with { type: 'json' }
import f75 from '../../rules/job/o-ring-does.json' with { type: 'json' }
import f76 from '../../rules/job/operations.json' with { type: 'json' }
import f77 from '../../rules/job/order-of-work.json' with { type: 'json' }
import f78 from '../../rules/job/positive-does.json' with { type: 'json' }
import f79 from '../../rules/job/pressure-test-jacket.json' with { type: 'json' }
import f80 from '../../rules/job/properties.json' with { type: 'json' }
import f81 from '../../rules/job/pump-asks-positive.json' with { type: 'json' }
import f82 from '../../rules/job/ratio-raised.json' with { type: 'json' }
import f83 from '../../rules/job/retainers-with-springs.json' with { type: 'json' }
import f84 from '../../rules/job/road-emissions.json' with { type: 'json' }
import f85 from '../../rules/job/rockers-changed.json' with { type: 'json' }
import f86 from '../../rules/job/rockers-past-lift.json' with { type: 'json' }
import f87 from '../../rules/job/rockers-within-lift.json' with { type: 'json' }
import f88 from '../../rules/job/roller-lifters.json' with { type: 'json' }
import f89 from '../../rules/job/routine-work.json' with { type: 'json' }
import f90 from '../../rules/job/seal-clearance.json' with { type: 'json' }
import f91 from '../../rules/job/seal-clears-spring.json' with { type: 'json' }
import f92 from '../../rules/job/seal-in-spring.json' with { type: 'json' }
import f93 from '../../rules/job/seal-near-spring.json' with { type: 'json' }
import f94 from '../../rules/job/seal-no-room.json' with { type: 'json' }
import f95 from '../../rules/job/seal-remedies.json' with { type: 'json' }
import f96 from '../../rules/job/seals-always-new.json' with { type: 'json' }
import f97 from '../../rules/job/seals-head-on.json' with { type: 'json' }
import f98 from '../../rules/job/seals-suit-pump.json' with { type: 'json' }
import f99 from '../../rules/job/spring-loose-in-pocket.json' with { type: 'json' }
import f100 from '../../rules/job/spring-too-big-for-pocket.json' with { type: 'json' }
import f101 from '../../rules/job/springs-at-overhaul.json' with { type: 'json' }
import f102 from '../../rules/job/springs-bind.json' with { type: 'json' }
import f103 from '../../rules/job/springs-clear-bind.json' with { type: 'json' }
import f104 from '../../rules/job/springs-over-least.json' with { type: 'json' }
import f105 from '../../rules/job/springs-past-card-lift.json' with { type: 'json' }
import f106 from '../../rules/job/springs-too-strong.json' with { type: 'json' }
import f107 from '../../rules/job/springs-too-weak.json' with { type: 'json' }
import f108 from '../../rules/job/springs-under-most.json' with { type: 'json' }
import f109 from '../../rules/job/springs-with-cam.json' with { type: 'json' }
import f110 from '../../rules/job/springs-within-card-lift.json' with { type: 'json' }
import f111 from '../../rules/job/stock-springs-changed-cam.json' with { type: 'json' }
import f112 from '../../rules/job/stud-upper-advised.json' with { type: 'json' }
import f113 from '../../rules/job/studs-convert-advised.json' with { type: 'json' }
import f114 from '../../rules/job/studs-convert.json' with { type: 'json' }
import f115 from '../../rules/job/studs-suit.json' with { type: 'json' }
import f116 from '../../rules/job/studs-upper-thread.json' with { type: 'json' }
import f117 from '../../rules/job/subjects.json' with { type: 'json' }
import f118 from '../../rules/job/umbrella-does.json' with { type: 'json' }
import f119 from '../../rules/job/umbrella-fallback.json' with { type: 'json' }
import f120 from '../../rules/job/wash-aluminium.json' with { type: 'json' }
import f121 from '../../rules/job/wash-iron.json' with { type: 'json' }
import f122 from '../../rules/oil-pump/kind-differs.json' with { type: 'json' }
import f123 from '../../rules/oil-pump/looked-over.json' with { type: 'json' }
import f124 from '../../rules/oil-pump/properties.json' with { type: 'json' }
import f125 from '../../rules/oil-pump/spoiled.json' with { type: 'json' }
import f126 from '../../rules/phrases.json' with { type: 'json' }
import f127 from '../../rules/retainer/cracked.json' with { type: 'json' }
import f128 from '../../rules/retainer/keepers-sink-deep.json' with { type: 'json' }
import f129 from '../../rules/retainer/keepers-sound.json' with { type: 'json' }
import f130 from '../../rules/retainer/keepers-stand-uneven.json' with { type: 'json' }
import f131 from '../../rules/retainer/keepers-worn.json' with { type: 'json' }
import f132 from '../../rules/retainer/limits.json' with { type: 'json' }
import f133 from '../../rules/retainer/looks-sound.json' with { type: 'json' }
import f134 from '../../rules/retainer/multi-groove-gap.json' with { type: 'json' }
import f135 from '../../rules/retainer/properties.json' with { type: 'json' }
import f136 from '../../rules/retainer/single-groove-touch.json' with { type: 'json' }
import f137 from '../../rules/retainer/worn-out.json' with { type: 'json' }
import f138 from '../../rules/rocker-stud/bent-stud.json' with { type: 'json' }
import f139 from '../../rules/rocker-stud/gauge-fails.json' with { type: 'json' }
import f140 from '../../rules/rocker-stud/groove-condemns.json' with { type: 'json' }
import f141 from '../../rules/rocker-stud/groove-measured.json' with { type: 'json' }
import f142 from '../../rules/rocker-stud/limits.json' with { type: 'json' }
import f143 from '../../rules/rocker-stud/new-nut-slips.json' with { type: 'json' }
import f144 from '../../rules/rocker-stud/nut-drag-low.json' with { type: 'json' }
import f145 from '../../rules/rocker-stud/nut-holds.json' with { type: 'json' }
import f146 from '../../rules/rocker-stud/nut-runs-free.json' with { type: 'json' }
import f147 from '../../rules/rocker-stud/polish-looks-further.json' with { type: 'json' }
import f148 from '../../rules/rocker-stud/pressed-stud-loose.json' with { type: 'json' }
import f149 from '../../rules/rocker-stud/pressed-stud-proud.json' with { type: 'json' }
import f150 from '../../rules/rocker-stud/pressed-stud-watch.json' with { type: 'json' }
import f151 from '../../rules/rocker-stud/properties.json' with { type: 'json' }
import f152 from '../../rules/rocker-stud/screw-in-stud-loose.json' with { type: 'json' }
import f153 from '../../rules/rocker-stud/shoulder-smooth.json' with { type: 'json' }
import f154 from '../../rules/rocker-stud/stays-put.json' with { type: 'json' }
import f155 from '../../rules/rocker-stud/straight.json' with { type: 'json' }
import f156 from '../../rules/rocker-stud/thread-beyond-chasing.json' with { type: 'json' }
import f157 from '../../rules/rocker-stud/thread-chase.json' with { type: 'json' }
import f158 from '../../rules/rocker-stud/thread-crest-lost.json' with { type: 'json' }
import f159 from '../../rules/rocker-stud/thread-gauged.json' with { type: 'json' }
import f160 from '../../rules/rocker-stud/thread-pitch-off.json' with { type: 'json' }
import f161 from '../../rules/rocker-stud/thread-sound.json' with { type: 'json' }
import f162 from '../../rules/rocker-stud/thread-turns-lost.json' with { type: 'json' }
import f163 from '../../rules/rocker/goes-with-grooved-stud.json' with { type: 'json' }
import f164 from '../../rules/rocker/goes-with-measured-groove.json' with { type: 'json' }
import f165 from '../../rules/rocker/limits.json' with { type: 'json' }
import f166 from '../../rules/rocker/out-of-true.json' with { type: 'json' }
import f167 from '../../rules/rocker/pad-marked-stamped.json' with { type: 'json' }
import f168 from '../../rules/rocker/pad-regrind.json' with { type: 'json' }
import f169 from '../../rules/rocker/pad-smooth.json' with { type: 'json' }
import f170 from '../../rules/rocker/pad-worn-out.json' with { type: 'json' }
import f171 from '../../rules/rocker/pivot-damaged.json' with { type: 'json' }
import f172 from '../../rules/rocker/pivot-one-sided.json' with { type: 'json' }
import f173 from '../../rules/rocker/pivot-smooth.json' with { type: 'json' }
import f174 from '../../rules/rocker/properties.json' with { type: 'json' }
import f175 from '../../rules/rocker/slot-clearance.json' with { type: 'json' }
import f176 from '../../rules/rocker/slot-rubbed-end.json' with { type: 'json' }
import f177 from '../../rules/rocker/slot-rubbed-side.json' with { type: 'json' }
import f178 from '../../rules/rocker/slot-tight.json' with { type: 'json' }
import f179 from '../../rules/rocker/slot-unmarked.json' with { type: 'json' }
import f180 from '../../rules/rocker/track-off-centre.json' with { type: 'json' }
import f181 from '../../rules/rocker/track-offset-measured.json' with { type: 'json' }
import f182 from '../../rules/rocker/track-wide.json' with { type: 'json' }
import f183 from '../../rules/rocker/true-running.json' with { type: 'json' }
import f184 from '../../rules/seat/angle-off.json' with { type: 'json' }
import f185 from '../../rules/seat/angles-told.json' with { type: 'json' }
import f186 from '../../rules/seat/bare-inner-short.json' with { type: 'json' }
import f187 from '../../rules/seat/bare-outer-short.json' with { type: 'json' }
import f188 from '../../rules/seat/burned-recut.json' with { type: 'json' }
import f189 from '../../rules/seat/centre-high.json' with { type: 'json' }
import f190 from '../../rules/seat/centre-low.json' with { type: 'json' }
import f191 from '../../rules/seat/copper-dust.json' with { type: 'json' }
import f192 from '../../rules/seat/cracked.json' with { type: 'json' }
import f193 from '../../rules/seat/cut-as-planned.json' with { type: 'json' }
import f194 from '../../rules/seat/cut-hard-skin-tested.json' with { type: 'json' }
import f195 from '../../rules/seat/depth-known.json' with { type: 'json' }
import f196 from '../../rules/seat/dull-insert-noted.json' with { type: 'json' }
import f197 from '../../rules/seat/face-not-bare.json' with { type: 'json' }
import f198 from '../../rules/seat/face-not-true.json' with { type: 'json' }
import f199 from '../../rules/seat/film-on-seat-shows-face.json' with { type: 'json' }
import f200 from '../../rules/seat/gas-inserts-matched.json' with { type: 'json' }
import f201 from '../../rules/seat/guide-renewed.json' with { type: 'json' }
import f202 from '../../rules/seat/hard-skin-cut.json' with { type: 'json' }
import f203 from '../../rules/seat/head-takes-no-insert.json' with { type: 'json' }
import f204 from '../../rules/seat/insert-burned.json' with { type: 'json' }
import f205 from '../../rules/seat/insert-loose.json' with { type: 'json' }
import f206 from '../../rules/seat/insert-set-back.json' with { type: 'json' }
import f207 from '../../rules/seat/insert-too-loose.json' with { type: 'json' }
import f208 from '../../rules/seat/insert-too-tight.json' with { type: 'json' }
import f209 from '../../rules/seat/interference-on-gas.json' with { type: 'json' }
import f210 from '../../rules/seat/lash-closed.json' with { type: 'json' }
import f211 from '../../rules/seat/limits.json' with { type: 'json' }
import f212 from '../../rules/seat/looks-sound.json' with { type: 'json' }
import f213 from '../../rules/seat/new-insert.json' with { type: 'json' }
import f214 from '../../rules/seat/no-metal-left.json' with { type: 'json' }
import f215 from '../../rules/seat/not-all-round.json' with { type: 'json' }
import f216 from '../../rules/seat/pocketed.json' with { type: 'json' }
import f217 from '../../rules/seat/pour-test-weeps.json' with { type: 'json' }
import f218 from '../../rules/seat/properties.json' with { type: 'json' }
import f219 from '../../rules/seat/recut.json' with { type: 'json' }
import f220 from '../../rules/seat/ring-high.json' with { type: 'json' }
import f221 from '../../rules/seat/ring-looked-at.json' with { type: 'json' }
import f222 from '../../rules/seat/ring-low.json' with { type: 'json' }
import f223 from '../../rules/seat/ring-narrow-high.json' with { type: 'json' }
import f224 from '../../rules/seat/ring-narrow-low.json' with { type: 'json' }
import f225 from '../../rules/seat/ring-narrow.json' with { type: 'json' }
import f226 from '../../rules/seat/ring-wide.json' with { type: 'json' }
import f227 from '../../rules/seat/roundness-shown.json' with { type: 'json' }
import f228 from '../../rules/seat/runout-cause.json' with { type: 'json' }
import f229 from '../../rules/seat/runs-out.json' with { type: 'json' }
import f230 from '../../rules/seat/sinks-by-work.json' with { type: 'json' }
import f231 from '../../rules/seat/soft-and-sunk.json' with { type: 'json' }
import f232 from '../../rules/seat/soft-lash-closing.json' with { type: 'json' }
import f233 from '../../rules/seat/soft-on-gas.json' with { type: 'json' }
import f234 from '../../rules/seat/soft-on-petrol.json' with { type: 'json' }
import f235 from '../../rules/seat/soft-seat-watched.json' with { type: 'json' }
import f236 from '../../rules/seat/spun-shows-place.json' with { type: 'json' }
import f237 from '../../rules/seat/stock-spent.json' with { type: 'json' }
import f238 from '../../rules/seat/sunk-try-new-valve.json' with { type: 'json' }
import f239 from '../../rules/seat/sunk-with-new-valve.json' with { type: 'json' }
import f240 from '../../rules/seat/thirty-degree-seat.json' with { type: 'json' }
import f241 from '../../rules/seat/throat-cutter-too-flat.json' with { type: 'json' }
import f242 from '../../rules/seat/top-cutter-too-steep.json' with { type: 'json' }
import f243 from '../../rules/seat/vacuum-below-mates.json' with { type: 'json' }
import f244 from '../../rules/seat/vacuum-falls.json' with { type: 'json' }
import f245 from '../../rules/seat/vacuum-guide-open.json' with { type: 'json' }
import f246 from '../../rules/seat/vacuum-low.json' with { type: 'json' }
import f247 from '../../rules/sources/army-od1001.json' with { type: 'json' }
import f248 from '../../rules/sources/army-tm-1-1500-204-23-1.json' with { type: 'json' }
import f249 from '../../rules/sources/army-tm-1-1500-204-23-6.json' with { type: 'json' }
import f250 from '../../rules/sources/army-tm-1-1500-204-23-9.json' with { type: 'json' }
import f251 from '../../rules/sources/army-tm-10-3510-209-24.json' with { type: 'json' }
import f252 from '../../rules/sources/army-tm-10-3930-621-34.json' with { type: 'json' }
import f253 from '../../rules/sources/army-tm-10-3930-659-34.json' with { type: 'json' }
import f254 from '../../rules/sources/army-tm-10-3930-671-24.json' with { type: 'json' }
import f255 from '../../rules/sources/army-tm-5-1940-322-24.json' with { type: 'json' }
import f256 from '../../rules/sources/army-tm-5-3805-255-14.json' with { type: 'json' }
import f257 from '../../rules/sources/army-tm-5-3805-262-34.json' with { type: 'json' }
import f258 from '../../rules/sources/army-tm-5-3805-298-23-2.json' with { type: 'json' }
import f259 from '../../rules/sources/army-tm-5-3810-289-34.json' with { type: 'json' }
import f260 from '../../rules/sources/army-tm-5-3810-295-34.json' with { type: 'json' }
import f261 from '../../rules/sources/army-tm-5-3810-306-34.json' with { type: 'json' }
import f262 from '../../rules/sources/army-tm-5-3820-256-24-5.json' with { type: 'json' }
import f263 from '../../rules/sources/army-tm-5-4320-240-15.json' with { type: 'json' }
import f264 from '../../rules/sources/army-tm-5-4320-300-14.json' with { type: 'json' }
import f265 from '../../rules/sources/army-tm-5-6115-400-35.json' with { type: 'json' }
import f266 from '../../rules/sources/army-tm-5-6115-593-34.json' with { type: 'json' }
import f267 from '../../rules/sources/army-tm-55-1905-223-24-5.json' with { type: 'json' }
import f268 from '../../rules/sources/army-tm-9-2320-260-34-1.json' with { type: 'json' }
import f269 from '../../rules/sources/army-tm-9-2320-366-34-4.json' with { type: 'json' }
import f270 from '../../rules/sources/army-tm-9-2815-255-24.json' with { type: 'json' }
import f271 from '../../rules/sources/army-tm-9-4310-397-14.json' with { type: 'json' }
import f272 from '../../rules/sources/army-tm-9-6115-604-34.json' with { type: 'json' }
import f273 from '../../rules/sources/army-tm-9-8000.json' with { type: 'json' }
import f274 from '../../rules/sources/clean-air-act.json' with { type: 'json' }
import f275 from '../../rules/sources/memory.json' with { type: 'json' }
import f276 from '../../rules/sources/navy-14329.json' with { type: 'json' }
import f277 from '../../rules/sources/navy-engineman-2-broken-valves.json' with { type: 'json' }
import f278 from '../../rules/sources/navy-navedtra-14076.json' with { type: 'json' }
import f279 from '../../rules/sources/normal-quantiles.json' with { type: 'json' }
import f280 from '../../rules/sources/osha-abrasive-wheels.json' with { type: 'json' }
import f281 from '../../rules/sources/osha-asbestos.json' with { type: 'json' }
import f282 from '../../rules/sources/osha-beryllium.json' with { type: 'json' }
import f283 from '../../rules/sources/osha-lead.json' with { type: 'json' }
import f284 from '../../rules/sources/practice-air-held-valves.json' with { type: 'json' }
import f285 from '../../rules/sources/practice-cam-change.json' with { type: 'json' }
import f286 from '../../rules/sources/practice-camshaft-look.json' with { type: 'json' }
import f287 from '../../rules/sources/practice-charred-seals.json' with { type: 'json' }
import f288 from '../../rules/sources/practice-coil-bind.json' with { type: 'json' }
import f289 from '../../rules/sources/practice-crack-test.json' with { type: 'json' }
import f290 from '../../rules/sources/practice-first-run.json' with { type: 'json' }
import f291 from '../../rules/sources/practice-flat-tappet-change.json' with { type: 'json' }
import f292 from '../../rules/sources/practice-flat-tappet-loads.json' with { type: 'json' }
import f293 from '../../rules/sources/practice-gas-isolation.json' with { type: 'json' }
import f294 from '../../rules/sources/practice-gas-seats.json' with { type: 'json' }
import f295 from '../../rules/sources/practice-guide-clearance.json' with { type: 'json' }
import f296 from '../../rules/sources/practice-guide-fit.json' with { type: 'json' }
import f297 from '../../rules/sources/practice-guide-measuring.json' with { type: 'json' }
import f298 from '../../rules/sources/practice-guide-plate.json' with { type: 'json' }
import f299 from '../../rules/sources/practice-guide-repair.json' with { type: 'json' }
import f300 from '../../rules/sources/practice-guide-tops.json' with { type: 'json' }
import f301 from '../../rules/sources/practice-hot-parts.json' with { type: 'json' }
import f302 from '../../rules/sources/practice-keeper-groove.json' with { type: 'json' }
import f303 from '../../rules/sources/practice-keepers.json' with { type: 'json' }
import f304 from '../../rules/sources/practice-leak-tests.json' with { type: 'json' }
import f305 from '../../rules/sources/practice-limits-of-advice.json' with { type: 'json' }
import f306 from '../../rules/sources/practice-missed-cracks.json' with { type: 'json' }
import f307 from '../../rules/sources/practice-oil-pump-look.json' with { type: 'json' }
import f308 from '../../rules/sources/practice-order-of-work.json' with { type: 'json' }
import f309 from '../../rules/sources/practice-pump-seals.json' with { type: 'json' }
import f310 from '../../rules/sources/practice-retainer-seal-room.json' with { type: 'json' }
import f311 from '../../rules/sources/practice-rocker-fit.json' with { type: 'json' }
import f312 from '../../rules/sources/practice-rocker-lift.json' with { type: 'json' }
import f313 from '../../rules/sources/practice-seal-kinds.json' with { type: 'json' }
import f314 from '../../rules/sources/practice-seal-set.json' with { type: 'json' }
import f315 from '../../rules/sources/practice-seal-spring-room.json' with { type: 'json' }
import f316 from '../../rules/sources/practice-seal-test.json' with { type: 'json' }
import f317 from '../../rules/sources/practice-seat-contact.json' with { type: 'json' }
import f318 from '../../rules/sources/practice-seat-cutters.json' with { type: 'json' }
import f319 from '../../rules/sources/practice-seat-inserts.json' with { type: 'json' }
import f320 from '../../rules/sources/practice-seat-sink.json' with { type: 'json' }
import f321 from '../../rules/sources/practice-seat-width.json' with { type: 'json' }
import f322 from '../../rules/sources/practice-side-play.json' with { type: 'json' }
import f323 from '../../rules/sources/practice-sodium-valves.json' with { type: 'json' }
import f324 from '../../rules/sources/practice-soft-seats.json' with { type: 'json' }
import f325 from '../../rules/sources/practice-special-valves.json' with { type: 'json' }
import f326 from '../../rules/sources/practice-spring-fit.json' with { type: 'json' }
import f327 from '../../rules/sources/practice-spring-height.json' with { type: 'json' }
import f328 from '../../rules/sources/practice-spring-match.json' with { type: 'json' }
import f329 from '../../rules/sources/practice-spring-test.json' with { type: 'json' }
import f330 from '../../rules/sources/practice-springs-at-overhaul.json' with { type: 'json' }
import f331 from '../../rules/sources/practice-stem-surface.json' with { type: 'json' }
import f332 from '../../rules/sources/practice-stem-wear.json' with { type: 'json' }
import f333 from '../../rules/sources/practice-stud-breakage.json' with { type: 'json' }
import f334 from '../../rules/sources/practice-stud-groove.json' with { type: 'json' }
import f335 from '../../rules/sources/practice-stud-in-boss.json' with { type: 'json' }
import f336 from '../../rules/sources/practice-test-pressure.json' with { type: 'json' }
import f337 from '../../rules/sources/practice-thread-chase.json' with { type: 'json' }
import f338 from '../../rules/sources/practice-tip-allowance.json' with { type: 'json' }
import f339 from '../../rules/sources/practice-tip-stand.json' with { type: 'json' }
import f340 from '../../rules/sources/practice-titanium.json' with { type: 'json' }
import f341 from '../../rules/sources/practice-valve-face.json' with { type: 'json' }
import f342 from '../../rules/sources/practice-valve-head.json' with { type: 'json' }
import f343 from '../../rules/sources/practice-valve-margin.json' with { type: 'json' }
import f344 from '../../rules/sources/practice-valve-tip.json' with { type: 'json' }
import f345 from '../../rules/sources/practice-wash-by-material.json' with { type: 'json' }
import f346 from '../../rules/sources/sae-710356.json' with { type: 'json' }
import f347 from '../../rules/sources/sae-871622.json' with { type: 'json' }
import f348 from '../../rules/sources/sae-932780.json' with { type: 'json' }
import f349 from '../../rules/sources/wang-1998-valve-seats.json' with { type: 'json' }
import f350 from '../../rules/spring/bind-margin-kept.json' with { type: 'json' }
import f351 from '../../rules/spring/binds.json' with { type: 'json' }
import f352 from '../../rules/spring/bright-spots-ask.json' with { type: 'json' }
import f353 from '../../rules/spring/damper-step.json' with { type: 'json' }
import f354 from '../../rules/spring/free-length-kept.json' with { type: 'json' }
import f355 from '../../rules/spring/height-shim.json' with { type: 'json' }
import f356 from '../../rules/spring/height-short.json' with { type: 'json' }
import f357 from '../../rules/spring/inside-smooth.json' with { type: 'json' }
import f358 from '../../rules/spring/limits.json' with { type: 'json' }
import f359 from '../../rules/spring/load-kept.json' with { type: 'json' }
import f360 from '../../rules/spring/odd-one-out.json' with { type: 'json' }
import f361 from '../../rules/spring/out-of-square.json' with { type: 'json' }
import f362 from '../../rules/spring/properties.json' with { type: 'json' }
import f363 from '../../rules/spring/stands-square.json' with { type: 'json' }
import f364 from '../../rules/spring/sunk-too-far.json' with { type: 'json' }
import f365 from '../../rules/spring/surface-fault.json' with { type: 'json' }
import f366 from '../../rules/spring/surface-sound.json' with { type: 'json' }
import f367 from '../../rules/spring/too-short.json' with { type: 'json' }
import f368 from '../../rules/spring/weak.json' with { type: 'json' }
import f369 from '../../rules/stem-seal/been-off.json' with { type: 'json' }
import f370 from '../../rules/stem-seal/charred.json' with { type: 'json' }
import f371 from '../../rules/stem-seal/failed.json' with { type: 'json' }
import f372 from '../../rules/stem-seal/is-o-ring.json' with { type: 'json' }
import f373 from '../../rules/stem-seal/is-positive.json' with { type: 'json' }
import f374 from '../../rules/stem-seal/is-umbrella.json' with { type: 'json' }
import f375 from '../../rules/stem-seal/properties.json' with { type: 'json' }
import f376 from '../../rules/stem-seal/undisturbed.json' with { type: 'json' }
import f377 from '../../rules/stem-seal/word-and-test-differ.json' with { type: 'json' }
import f378 from '../../rules/valve/crack-found.json' with { type: 'json' }
import f379 from '../../rules/valve/face-burned.json' with { type: 'json' }
import f380 from '../../rules/valve/face-not-ground.json' with { type: 'json' }
import f381 from '../../rules/valve/face-one-sided.json' with { type: 'json' }
import f382 from '../../rules/valve/face-refaced.json' with { type: 'json' }
import f383 from '../../rules/valve/face-stock-spent.json' with { type: 'json' }
import f384 from '../../rules/valve/face-through-facing.json' with { type: 'json' }
import f385 from '../../rules/valve/face-true.json' with { type: 'json' }
import f386 from '../../rules/valve/face-trued.json' with { type: 'json' }
import f387 from '../../rules/valve/face-untrue-not-ground.json' with { type: 'json' }
import f388 from '../../rules/valve/filled-valve-hold.json' with { type: 'json' }
import f389 from '../../rules/valve/filled-valve-mark.json' with { type: 'json' }
import f390 from '../../rules/valve/head-cracked.json' with { type: 'json' }
import f391 from '../../rules/valve/head-misshapen.json' with { type: 'json' }
import f392 from '../../rules/valve/head-struck.json' with { type: 'json' }
import f393 from '../../rules/valve/keeper-groove-holds.json' with { type: 'json' }
import f394 from '../../rules/valve/keeper-groove-loose.json' with { type: 'json' }
import f395 from '../../rules/valve/keeper-groove-worn.json' with { type: 'json' }
import f396 from '../../rules/valve/limits.json' with { type: 'json' }
import f397 from '../../rules/valve/looks-sound.json' with { type: 'json' }
import f398 from '../../rules/valve/margin-enough.json' with { type: 'json' }
import f399 from '../../rules/valve/margin-exhaust-thin.json' with { type: 'json' }
import f400 from '../../rules/valve/margin-gone-after-facing.json' with { type: 'json' }
import f401 from '../../rules/valve/margin-thin.json' with { type: 'json' }
import f402 from '../../rules/valve/mushroom-before-drawing.json' with { type: 'json' }
import f403 from '../../rules/valve/nitrided-not-ground.json' with { type: 'json' }
import f404 from '../../rules/valve/properties.json' with { type: 'json' }
import f405 from '../../rules/valve/stem-bent.json' with { type: 'json' }
import f406 from '../../rules/valve/stem-in-size.json' with { type: 'json' }
import f407 from '../../rules/valve/stem-necked.json' with { type: 'json' }
import f408 from '../../rules/valve/stem-nicks-coated.json' with { type: 'json' }
import f409 from '../../rules/valve/stem-nicks.json' with { type: 'json' }
import f410 from '../../rules/valve/stem-plating-worn.json' with { type: 'json' }
import f411 from '../../rules/valve/stem-runout-over.json' with { type: 'json' }
import f412 from '../../rules/valve/stem-scored.json' with { type: 'json' }
import f413 from '../../rules/valve/stem-undersize.json' with { type: 'json' }
import f414 from '../../rules/valve/stem-wear-asks.json' with { type: 'json' }
import f415 from '../../rules/valve/tip-broken.json' with { type: 'json' }
import f416 from '../../rules/valve/tip-mushroomed.json' with { type: 'json' }
import f417 from '../../rules/valve/tip-no-stock.json' with { type: 'json' }
import f418 from '../../rules/valve/tip-not-ground.json' with { type: 'json' }
import f419 from '../../rules/valve/tip-reground.json' with { type: 'json' }
import f420 from '../../rules/valve/tip-soft.json' with { type: 'json' }
import f421 from '../../rules/valve/tip-stands-low.json' with { type: 'json' }
import f422 from '../../rules/valve/tip-stock.json' with { type: 'json' }
import f423 from '../../rules/valve/tip-taken-over.json' with { type: 'json' }
import f424 from '../../rules/valve/titanium-not-ground.json' with { type: 'json' }

/** Every file under rules/, by its path there. */
export const FILES: Readonly<Record<string, unknown>> = {
  'camshaft/lifters-spoiled.json': f0,
  'camshaft/lobes-spoiled.json': f1,
  'camshaft/looked-over.json': f2,
  'camshaft/properties.json': f3,
  'cautions.json': f4,
  'confidence.json': f5,
  'engines/QL-6P.json': f6,
  'engines/QL-8S.json': f7,
  'guide-plate/limits.json': f8,
  'guide-plate/properties.json': f9,
  'guide-plate/rods-bind.json': f10,
  'guide-plate/slot-play-tight.json': f11,
  'guide-plate/slot-play-wide.json': f12,
  'guide-plate/slot-stepped.json': f13,
  'guide-plate/slot-wear.json': f14,
  'guide-plate/slots-smooth.json': f15,
  'guide-plate/soft-rods.json': f16,
  'guide-plate/two-guides.json': f17,
  'guide/bellmouth-replaced.json': f18,
  'guide/bellmouth-restored.json': f19,
  'guide/broken.json': f20,
  'guide/bronze-dust.json': f21,
  'guide/clearance-in-limit.json': f22,
  'guide/fit-loose-half.json': f23,
  'guide/inside-limit-noted.json': f24,
  'guide/knurl-allowed.json': f25,
  'guide/knurl-refused.json': f26,
  'guide/limits.json': f27,
  'guide/looks-sound.json': f28,
  'guide/loose-in-head.json': f29,
  'guide/loose-powdered-metal.json': f30,
  'guide/not-too-tight.json': f31,
  'guide/out-of-round-replaced.json': f32,
  'guide/out-of-round-restored.json': f33,
  'guide/over-new-fit.json': f34,
  'guide/plug-shows-nothing.json': f35,
  'guide/press-too-heavy.json': f36,
  'guide/press-too-light.json': f37,
  'guide/properties.json': f38,
  'guide/scored-replaced.json': f39,
  'guide/scored-restored.json': f40,
  'guide/selective-fit.json': f41,
  'guide/side-play-asks.json': f42,
  'guide/side-play-light.json': f43,
  'guide/too-short.json': f44,
  'guide/too-tight-nitrided.json': f45,
  'guide/too-tight.json': f46,
  'guide/tool-shows-double.json': f47,
  'guide/top-too-big.json': f48,
  'guide/top-too-small.json': f49,
  'guide/top-wall-thin.json': f50,
  'guide/worn-replaced.json': f51,
  'guide/worn-restored.json': f52,
  'instruments.json': f53,
  'job/bind-roomy.json': f54,
  'job/cam-card-known.json': f55,
  'job/cam-change-checks.json': f56,
  'job/camshaft-replaced.json': f57,
  'job/card-asks-springs.json': f58,
  'job/crack-test-aluminium.json': f59,
  'job/crack-test-iron.json': f60,
  'job/drain-back-first.json': f61,
  'job/flat-tappets-kept.json': f62,
  'job/gas-fuel.json': f63,
  'job/guide-cut-too-deep.json': f64,
  'job/guide-top-cut-needed.json': f65,
  'job/guide-top-cut-planned.json': f66,
  'job/guide-top-for-seal.json': f67,
  'job/inner-springs-bind.json': f68,
  'job/inner-springs-clear-bind.json': f69,
  'job/inner-too-big-for-outer.json': f70,
  'job/kit-complete.json': f71,
  'job/limits.json': f72,
  'job/metal-known.json': f73,
  'job/new-flat-tappets.json': f74,
  'job/o-ring-does.json': f75,
  'job/operations.json': f76,
  'job/order-of-work.json': f77,
  'job/positive-does.json': f78,
  'job/pressure-test-jacket.json': f79,
  'job/properties.json': f80,
  'job/pump-asks-positive.json': f81,
  'job/ratio-raised.json': f82,
  'job/retainers-with-springs.json': f83,
  'job/road-emissions.json': f84,
  'job/rockers-changed.json': f85,
  'job/rockers-past-lift.json': f86,
  'job/rockers-within-lift.json': f87,
  'job/roller-lifters.json': f88,
  'job/routine-work.json': f89,
  'job/seal-clearance.json': f90,
  'job/seal-clears-spring.json': f91,
  'job/seal-in-spring.json': f92,
  'job/seal-near-spring.json': f93,
  'job/seal-no-room.json': f94,
  'job/seal-remedies.json': f95,
  'job/seals-always-new.json': f96,
  'job/seals-head-on.json': f97,
  'job/seals-suit-pump.json': f98,
  'job/spring-loose-in-pocket.json': f99,
  'job/spring-too-big-for-pocket.json': f100,
  'job/springs-at-overhaul.json': f101,
  'job/springs-bind.json': f102,
  'job/springs-clear-bind.json': f103,
  'job/springs-over-least.json': f104,
  'job/springs-past-card-lift.json': f105,
  'job/springs-too-strong.json': f106,
  'job/springs-too-weak.json': f107,
  'job/springs-under-most.json': f108,
  'job/springs-with-cam.json': f109,
  'job/springs-within-card-lift.json': f110,
  'job/stock-springs-changed-cam.json': f111,
  'job/stud-upper-advised.json': f112,
  'job/studs-convert-advised.json': f113,
  'job/studs-convert.json': f114,
  'job/studs-suit.json': f115,
  'job/studs-upper-thread.json': f116,
  'job/subjects.json': f117,
  'job/umbrella-does.json': f118,
  'job/umbrella-fallback.json': f119,
  'job/wash-aluminium.json': f120,
  'job/wash-iron.json': f121,
  'oil-pump/kind-differs.json': f122,
  'oil-pump/looked-over.json': f123,
  'oil-pump/properties.json': f124,
  'oil-pump/spoiled.json': f125,
  'phrases.json': f126,
  'retainer/cracked.json': f127,
  'retainer/keepers-sink-deep.json': f128,
  'retainer/keepers-sound.json': f129,
  'retainer/keepers-stand-uneven.json': f130,
  'retainer/keepers-worn.json': f131,
  'retainer/limits.json': f132,
  'retainer/looks-sound.json': f133,
  'retainer/multi-groove-gap.json': f134,
  'retainer/properties.json': f135,
  'retainer/single-groove-touch.json': f136,
  'retainer/worn-out.json': f137,
  'rocker-stud/bent-stud.json': f138,
  'rocker-stud/gauge-fails.json': f139,
  'rocker-stud/groove-condemns.json': f140,
  'rocker-stud/groove-measured.json': f141,
  'rocker-stud/limits.json': f142,
  'rocker-stud/new-nut-slips.json': f143,
  'rocker-stud/nut-drag-low.json': f144,
  'rocker-stud/nut-holds.json': f145,
  'rocker-stud/nut-runs-free.json': f146,
  'rocker-stud/polish-looks-further.json': f147,
  'rocker-stud/pressed-stud-loose.json': f148,
  'rocker-stud/pressed-stud-proud.json': f149,
  'rocker-stud/pressed-stud-watch.json': f150,
  'rocker-stud/properties.json': f151,
  'rocker-stud/screw-in-stud-loose.json': f152,
  'rocker-stud/shoulder-smooth.json': f153,
  'rocker-stud/stays-put.json': f154,
  'rocker-stud/straight.json': f155,
  'rocker-stud/thread-beyond-chasing.json': f156,
  'rocker-stud/thread-chase.json': f157,
  'rocker-stud/thread-crest-lost.json': f158,
  'rocker-stud/thread-gauged.json': f159,
  'rocker-stud/thread-pitch-off.json': f160,
  'rocker-stud/thread-sound.json': f161,
  'rocker-stud/thread-turns-lost.json': f162,
  'rocker/goes-with-grooved-stud.json': f163,
  'rocker/goes-with-measured-groove.json': f164,
  'rocker/limits.json': f165,
  'rocker/out-of-true.json': f166,
  'rocker/pad-marked-stamped.json': f167,
  'rocker/pad-regrind.json': f168,
  'rocker/pad-smooth.json': f169,
  'rocker/pad-worn-out.json': f170,
  'rocker/pivot-damaged.json': f171,
  'rocker/pivot-one-sided.json': f172,
  'rocker/pivot-smooth.json': f173,
  'rocker/properties.json': f174,
  'rocker/slot-clearance.json': f175,
  'rocker/slot-rubbed-end.json': f176,
  'rocker/slot-rubbed-side.json': f177,
  'rocker/slot-tight.json': f178,
  'rocker/slot-unmarked.json': f179,
  'rocker/track-off-centre.json': f180,
  'rocker/track-offset-measured.json': f181,
  'rocker/track-wide.json': f182,
  'rocker/true-running.json': f183,
  'seat/angle-off.json': f184,
  'seat/angles-told.json': f185,
  'seat/bare-inner-short.json': f186,
  'seat/bare-outer-short.json': f187,
  'seat/burned-recut.json': f188,
  'seat/centre-high.json': f189,
  'seat/centre-low.json': f190,
  'seat/copper-dust.json': f191,
  'seat/cracked.json': f192,
  'seat/cut-as-planned.json': f193,
  'seat/cut-hard-skin-tested.json': f194,
  'seat/depth-known.json': f195,
  'seat/dull-insert-noted.json': f196,
  'seat/face-not-bare.json': f197,
  'seat/face-not-true.json': f198,
  'seat/film-on-seat-shows-face.json': f199,
  'seat/gas-inserts-matched.json': f200,
  'seat/guide-renewed.json': f201,
  'seat/hard-skin-cut.json': f202,
  'seat/head-takes-no-insert.json': f203,
  'seat/insert-burned.json': f204,
  'seat/insert-loose.json': f205,
  'seat/insert-set-back.json': f206,
  'seat/insert-too-loose.json': f207,
  'seat/insert-too-tight.json': f208,
  'seat/interference-on-gas.json': f209,
  'seat/lash-closed.json': f210,
  'seat/limits.json': f211,
  'seat/looks-sound.json': f212,
  'seat/new-insert.json': f213,
  'seat/no-metal-left.json': f214,
  'seat/not-all-round.json': f215,
  'seat/pocketed.json': f216,
  'seat/pour-test-weeps.json': f217,
  'seat/properties.json': f218,
  'seat/recut.json': f219,
  'seat/ring-high.json': f220,
  'seat/ring-looked-at.json': f221,
  'seat/ring-low.json': f222,
  'seat/ring-narrow-high.json': f223,
  'seat/ring-narrow-low.json': f224,
  'seat/ring-narrow.json': f225,
  'seat/ring-wide.json': f226,
  'seat/roundness-shown.json': f227,
  'seat/runout-cause.json': f228,
  'seat/runs-out.json': f229,
  'seat/sinks-by-work.json': f230,
  'seat/soft-and-sunk.json': f231,
  'seat/soft-lash-closing.json': f232,
  'seat/soft-on-gas.json': f233,
  'seat/soft-on-petrol.json': f234,
  'seat/soft-seat-watched.json': f235,
  'seat/spun-shows-place.json': f236,
  'seat/stock-spent.json': f237,
  'seat/sunk-try-new-valve.json': f238,
  'seat/sunk-with-new-valve.json': f239,
  'seat/thirty-degree-seat.json': f240,
  'seat/throat-cutter-too-flat.json': f241,
  'seat/top-cutter-too-steep.json': f242,
  'seat/vacuum-below-mates.json': f243,
  'seat/vacuum-falls.json': f244,
  'seat/vacuum-guide-open.json': f245,
  'seat/vacuum-low.json': f246,
  'sources/army-od1001.json': f247,
  'sources/army-tm-1-1500-204-23-1.json': f248,
  'sources/army-tm-1-1500-204-23-6.json': f249,
  'sources/army-tm-1-1500-204-23-9.json': f250,
  'sources/army-tm-10-3510-209-24.json': f251,
  'sources/army-tm-10-3930-621-34.json': f252,
  'sources/army-tm-10-3930-659-34.json': f253,
  'sources/army-tm-10-3930-671-24.json': f254,
  'sources/army-tm-5-1940-322-24.json': f255,
  'sources/army-tm-5-3805-255-14.json': f256,
  'sources/army-tm-5-3805-262-34.json': f257,
  'sources/army-tm-5-3805-298-23-2.json': f258,
  'sources/army-tm-5-3810-289-34.json': f259,
  'sources/army-tm-5-3810-295-34.json': f260,
  'sources/army-tm-5-3810-306-34.json': f261,
  'sources/army-tm-5-3820-256-24-5.json': f262,
  'sources/army-tm-5-4320-240-15.json': f263,
  'sources/army-tm-5-4320-300-14.json': f264,
  'sources/army-tm-5-6115-400-35.json': f265,
  'sources/army-tm-5-6115-593-34.json': f266,
  'sources/army-tm-55-1905-223-24-5.json': f267,
  'sources/army-tm-9-2320-260-34-1.json': f268,
  'sources/army-tm-9-2320-366-34-4.json': f269,
  'sources/army-tm-9-2815-255-24.json': f270,
  'sources/army-tm-9-4310-397-14.json': f271,
  'sources/army-tm-9-6115-604-34.json': f272,
  'sources/army-tm-9-8000.json': f273,
  'sources/clean-air-act.json': f274,
  'sources/memory.json': f275,
  'sources/navy-14329.json': f276,
  'sources/navy-engineman-2-broken-valves.json': f277,
  'sources/navy-navedtra-14076.json': f278,
  'sources/normal-quantiles.json': f279,
  'sources/osha-abrasive-wheels.json': f280,
  'sources/osha-asbestos.json': f281,
  'sources/osha-beryllium.json': f282,
  'sources/osha-lead.json': f283,
  'sources/practice-air-held-valves.json': f284,
  'sources/practice-cam-change.json': f285,
  'sources/practice-camshaft-look.json': f286,
  'sources/practice-charred-seals.json': f287,
  'sources/practice-coil-bind.json': f288,
  'sources/practice-crack-test.json': f289,
  'sources/practice-first-run.json': f290,
  'sources/practice-flat-tappet-change.json': f291,
  'sources/practice-flat-tappet-loads.json': f292,
  'sources/practice-gas-isolation.json': f293,
  'sources/practice-gas-seats.json': f294,
  'sources/practice-guide-clearance.json': f295,
  'sources/practice-guide-fit.json': f296,
  'sources/practice-guide-measuring.json': f297,
  'sources/practice-guide-plate.json': f298,
  'sources/practice-guide-repair.json': f299,
  'sources/practice-guide-tops.json': f300,
  'sources/practice-hot-parts.json': f301,
  'sources/practice-keeper-groove.json': f302,
  'sources/practice-keepers.json': f303,
  'sources/practice-leak-tests.json': f304,
  'sources/practice-limits-of-advice.json': f305,
  'sources/practice-missed-cracks.json': f306,
  'sources/practice-oil-pump-look.json': f307,
  'sources/practice-order-of-work.json': f308,
  'sources/practice-pump-seals.json': f309,
  'sources/practice-retainer-seal-room.json': f310,
  'sources/practice-rocker-fit.json': f311,
  'sources/practice-rocker-lift.json': f312,
  'sources/practice-seal-kinds.json': f313,
  'sources/practice-seal-set.json': f314,
  'sources/practice-seal-spring-room.json': f315,
  'sources/practice-seal-test.json': f316,
  'sources/practice-seat-contact.json': f317,
  'sources/practice-seat-cutters.json': f318,
  'sources/practice-seat-inserts.json': f319,
  'sources/practice-seat-sink.json': f320,
  'sources/practice-seat-width.json': f321,
  'sources/practice-side-play.json': f322,
  'sources/practice-sodium-valves.json': f323,
  'sources/practice-soft-seats.json': f324,
  'sources/practice-special-valves.json': f325,
  'sources/practice-spring-fit.json': f326,
  'sources/practice-spring-height.json': f327,
  'sources/practice-spring-match.json': f328,
  'sources/practice-spring-test.json': f329,
  'sources/practice-springs-at-overhaul.json': f330,
  'sources/practice-stem-surface.json': f331,
  'sources/practice-stem-wear.json': f332,
  'sources/practice-stud-breakage.json': f333,
  'sources/practice-stud-groove.json': f334,
  'sources/practice-stud-in-boss.json': f335,
  'sources/practice-test-pressure.json': f336,
  'sources/practice-thread-chase.json': f337,
  'sources/practice-tip-allowance.json': f338,
  'sources/practice-tip-stand.json': f339,
  'sources/practice-titanium.json': f340,
  'sources/practice-valve-face.json': f341,
  'sources/practice-valve-head.json': f342,
  'sources/practice-valve-margin.json': f343,
  'sources/practice-valve-tip.json': f344,
  'sources/practice-wash-by-material.json': f345,
  'sources/sae-710356.json': f346,
  'sources/sae-871622.json': f347,
  'sources/sae-932780.json': f348,
  'sources/wang-1998-valve-seats.json': f349,
  'spring/bind-margin-kept.json': f350,
  'spring/binds.json': f351,
  'spring/bright-spots-ask.json': f352,
  'spring/damper-step.json': f353,
  'spring/free-length-kept.json': f354,
  'spring/height-shim.json': f355,
  'spring/height-short.json': f356,
  'spring/inside-smooth.json': f357,
  'spring/limits.json': f358,
  'spring/load-kept.json': f359,
  'spring/odd-one-out.json': f360,
  'spring/out-of-square.json': f361,
  'spring/properties.json': f362,
  'spring/stands-square.json': f363,
  'spring/sunk-too-far.json': f364,
  'spring/surface-fault.json': f365,
  'spring/surface-sound.json': f366,
  'spring/too-short.json': f367,
  'spring/weak.json': f368,
  'stem-seal/been-off.json': f369,
  'stem-seal/charred.json': f370,
  'stem-seal/failed.json': f371,
  'stem-seal/is-o-ring.json': f372,
  'stem-seal/is-positive.json': f373,
  'stem-seal/is-umbrella.json': f374,
  'stem-seal/properties.json': f375,
  'stem-seal/undisturbed.json': f376,
  'stem-seal/word-and-test-differ.json': f377,
  'valve/crack-found.json': f378,
  'valve/face-burned.json': f379,
  'valve/face-not-ground.json': f380,
  'valve/face-one-sided.json': f381,
  'valve/face-refaced.json': f382,
  'valve/face-stock-spent.json': f383,
  'valve/face-through-facing.json': f384,
  'valve/face-true.json': f385,
  'valve/face-trued.json': f386,
  'valve/face-untrue-not-ground.json': f387,
  'valve/filled-valve-hold.json': f388,
  'valve/filled-valve-mark.json': f389,
  'valve/head-cracked.json': f390,
  'valve/head-misshapen.json': f391,
  'valve/head-struck.json': f392,
  'valve/keeper-groove-holds.json': f393,
  'valve/keeper-groove-loose.json': f394,
  'valve/keeper-groove-worn.json': f395,
  'valve/limits.json': f396,
  'valve/looks-sound.json': f397,
  'valve/margin-enough.json': f398,
  'valve/margin-exhaust-thin.json': f399,
  'valve/margin-gone-after-facing.json': f400,
  'valve/margin-thin.json': f401,
  'valve/mushroom-before-drawing.json': f402,
  'valve/nitrided-not-ground.json': f403,
  'valve/properties.json': f404,
  'valve/stem-bent.json': f405,
  'valve/stem-in-size.json': f406,
  'valve/stem-necked.json': f407,
  'valve/stem-nicks-coated.json': f408,
  'valve/stem-nicks.json': f409,
  'valve/stem-plating-worn.json': f410,
  'valve/stem-runout-over.json': f411,
  'valve/stem-scored.json': f412,
  'valve/stem-undersize.json': f413,
  'valve/stem-wear-asks.json': f414,
  'valve/tip-broken.json': f415,
  'valve/tip-mushroomed.json': f416,
  'valve/tip-no-stock.json': f417,
  'valve/tip-not-ground.json': f418,
  'valve/tip-reground.json': f419,
  'valve/tip-soft.json': f420,
  'valve/tip-stands-low.json': f421,
  'valve/tip-stock.json': f422,
  'valve/tip-taken-over.json': f423,
  'valve/titanium-not-ground.json': f424,
}
