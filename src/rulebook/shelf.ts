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
import f48 from '../../rules/guide/tool-shows-light.json' with { type: 'json' }
import f49 from '../../rules/guide/top-too-big.json' with { type: 'json' }
import f50 from '../../rules/guide/top-too-small.json' with { type: 'json' }
import f51 from '../../rules/guide/top-wall-thin.json' with { type: 'json' }
import f52 from '../../rules/guide/worn-replaced.json' with { type: 'json' }
import f53 from '../../rules/guide/worn-restored.json' with { type: 'json' }
import f54 from '../../rules/head/annealed.json' with { type: 'json' }
import f55 from '../../rules/head/bowed-straighten.json' with { type: 'json' }
import f56 from '../../rules/head/chambers-uneven.json' with { type: 'json' }
import f57 from '../../rules/head/corroded-land.json' with { type: 'json' }
import f58 from '../../rules/head/corroded-through.json' with { type: 'json' }
import f59 from '../../rules/head/corrosion-deep.json' with { type: 'json' }
import f60 from '../../rules/head/crack-accepted.json' with { type: 'json' }
import f61 from '../../rules/head/crack-repaired.json' with { type: 'json' }
import f62 from '../../rules/head/cracked-at-seat.json' with { type: 'json' }
import f63 from '../../rules/head/cracked-elsewhere.json' with { type: 'json' }
import f64 from '../../rules/head/deck-damaged.json' with { type: 'json' }
import f65 from '../../rules/head/finish-rough.json' with { type: 'json' }
import f66 from '../../rules/head/finish-smooth.json' with { type: 'json' }
import f67 from '../../rules/head/flat-enough.json' with { type: 'json' }
import f68 from '../../rules/head/hard-enough.json' with { type: 'json' }
import f69 from '../../rules/head/jacket-tight.json' with { type: 'json' }
import f70 from '../../rules/head/land-narrow.json' with { type: 'json' }
import f71 from '../../rules/head/leak-at-plug.json' with { type: 'json' }
import f72 from '../../rules/head/leak-at-stud-hole.json' with { type: 'json' }
import f73 from '../../rules/head/leak-repaired.json' with { type: 'json' }
import f74 from '../../rules/head/leak-through-casting.json' with { type: 'json' }
import f75 from '../../rules/head/leaks-cold.json' with { type: 'json' }
import f76 from '../../rules/head/leaks-hot.json' with { type: 'json' }
import f77 from '../../rules/head/limits.json' with { type: 'json' }
import f78 from '../../rules/head/looks-sound.json' with { type: 'json' }
import f79 from '../../rules/head/magnetic-crack-unplaced.json' with { type: 'json' }
import f80 from '../../rules/head/magnetic-says-nothing.json' with { type: 'json' }
import f81 from '../../rules/head/magnetic-tested.json' with { type: 'json' }
import f82 from '../../rules/head/manifold-face-warped.json' with { type: 'json' }
import f83 from '../../rules/head/no-metal-to-flatten.json' with { type: 'json' }
import f84 from '../../rules/head/over-flat.json' with { type: 'json' }
import f85 from '../../rules/head/passed-cold.json' with { type: 'json' }
import f86 from '../../rules/head/penetrant-crack-unplaced.json' with { type: 'json' }
import f87 from '../../rules/head/penetrant-tested.json' with { type: 'json' }
import f88 from '../../rules/head/plug-thread-spoiled.json' with { type: 'json' }
import f89 from '../../rules/head/properties.json' with { type: 'json' }
import f90 from '../../rules/head/ran-hot.json' with { type: 'json' }
import f91 from '../../rules/head/tested-too-cold.json' with { type: 'json' }
import f92 from '../../rules/head/tested-too-hard.json' with { type: 'json' }
import f93 from '../../rules/head/tested-too-soft.json' with { type: 'json' }
import f94 from '../../rules/head/thick-enough.json' with { type: 'json' }
import f95 from '../../rules/head/too-thin.json' with { type: 'json' }
import f96 from '../../rules/instruments.json' with { type: 'json' }
import f97 from '../../rules/job/bind-roomy.json' with { type: 'json' }
import f98 from '../../rules/job/blast-bead.json' with { type: 'json' }
import f99 from '../../rules/job/blast-grit.json' with { type: 'json' }
import f100 from '../../rules/job/bolt-washers-aluminium.json' with { type: 'json' }
import f101 from '../../rules/job/bolts-bottom.json' with { type: 'json' }
import f102 from '../../rules/job/called-aluminium-pulls.json' with { type: 'json' }
import f103 from '../../rules/job/called-iron-no-pull.json' with { type: 'json' }
import f104 from '../../rules/job/cam-card-known.json' with { type: 'json' }
import f105 from '../../rules/job/cam-change-checks.json' with { type: 'json' }
import f106 from '../../rules/job/camshaft-replaced.json' with { type: 'json' }
import f107 from '../../rules/job/card-asks-springs.json' with { type: 'json' }
import f108 from '../../rules/job/caustic-on-aluminium.json' with { type: 'json' }
import f109 from '../../rules/job/crack-test-aluminium.json' with { type: 'json' }
import f110 from '../../rules/job/crack-test-iron.json' with { type: 'json' }
import f111 from '../../rules/job/deck-cut-clears-exhaust.json' with { type: 'json' }
import f112 from '../../rules/job/deck-cut-clears-intake.json' with { type: 'json' }
import f113 from '../../rules/job/deck-cut-compression.json' with { type: 'json' }
import f114 from '../../rules/job/deck-cut-exhaust-too-close.json' with { type: 'json' }
import f115 from '../../rules/job/deck-cut-intake-too-close.json' with { type: 'json' }
import f116 from '../../rules/job/deck-cut-leaves-head.json' with { type: 'json' }
import f117 from '../../rules/job/deck-cut-orders.json' with { type: 'json' }
import f118 from '../../rules/job/deck-cut-too-deep.json' with { type: 'json' }
import f119 from '../../rules/job/deck-cut-vee.json' with { type: 'json' }
import f120 from '../../rules/job/drain-back-first.json' with { type: 'json' }
import f121 from '../../rules/job/flat-tappets-kept.json' with { type: 'json' }
import f122 from '../../rules/job/gas-fuel.json' with { type: 'json' }
import f123 from '../../rules/job/guide-cut-too-deep.json' with { type: 'json' }
import f124 from '../../rules/job/guide-top-cut-needed.json' with { type: 'json' }
import f125 from '../../rules/job/guide-top-cut-planned.json' with { type: 'json' }
import f126 from '../../rules/job/guide-top-for-seal.json' with { type: 'json' }
import f127 from '../../rules/job/head-bolt-holes.json' with { type: 'json' }
import f128 from '../../rules/job/inner-springs-bind.json' with { type: 'json' }
import f129 from '../../rules/job/inner-springs-clear-bind.json' with { type: 'json' }
import f130 from '../../rules/job/inner-too-big-for-outer.json' with { type: 'json' }
import f131 from '../../rules/job/kit-complete.json' with { type: 'json' }
import f132 from '../../rules/job/limits.json' with { type: 'json' }
import f133 from '../../rules/job/metal-known.json' with { type: 'json' }
import f134 from '../../rules/job/new-flat-tappets.json' with { type: 'json' }
import f135 from '../../rules/job/o-ring-does.json' with { type: 'json' }
import f136 from '../../rules/job/operations.json' with { type: 'json' }
import f137 from '../../rules/job/order-of-work.json' with { type: 'json' }
import f138 from '../../rules/job/piston-near-exhaust.json' with { type: 'json' }
import f139 from '../../rules/job/piston-near-intake.json' with { type: 'json' }
import f140 from '../../rules/job/positive-does.json' with { type: 'json' }
import f141 from '../../rules/job/pressure-test-jacket.json' with { type: 'json' }
import f142 from '../../rules/job/properties.json' with { type: 'json' }
import f143 from '../../rules/job/pump-asks-positive.json' with { type: 'json' }
import f144 from '../../rules/job/ratio-raised.json' with { type: 'json' }
import f145 from '../../rules/job/retainers-with-springs.json' with { type: 'json' }
import f146 from '../../rules/job/road-emissions.json' with { type: 'json' }
import f147 from '../../rules/job/rockers-changed.json' with { type: 'json' }
import f148 from '../../rules/job/rockers-past-lift.json' with { type: 'json' }
import f149 from '../../rules/job/rockers-within-lift.json' with { type: 'json' }
import f150 from '../../rules/job/roller-lifters.json' with { type: 'json' }
import f151 from '../../rules/job/routine-work.json' with { type: 'json' }
import f152 from '../../rules/job/seal-clearance.json' with { type: 'json' }
import f153 from '../../rules/job/seal-clears-spring.json' with { type: 'json' }
import f154 from '../../rules/job/seal-in-spring.json' with { type: 'json' }
import f155 from '../../rules/job/seal-near-spring.json' with { type: 'json' }
import f156 from '../../rules/job/seal-no-room.json' with { type: 'json' }
import f157 from '../../rules/job/seal-remedies.json' with { type: 'json' }
import f158 from '../../rules/job/seals-always-new.json' with { type: 'json' }
import f159 from '../../rules/job/seals-head-on.json' with { type: 'json' }
import f160 from '../../rules/job/seals-suit-pump.json' with { type: 'json' }
import f161 from '../../rules/job/spring-loose-in-pocket.json' with { type: 'json' }
import f162 from '../../rules/job/spring-too-big-for-pocket.json' with { type: 'json' }
import f163 from '../../rules/job/springs-at-overhaul.json' with { type: 'json' }
import f164 from '../../rules/job/springs-bind.json' with { type: 'json' }
import f165 from '../../rules/job/springs-clear-bind.json' with { type: 'json' }
import f166 from '../../rules/job/springs-over-least.json' with { type: 'json' }
import f167 from '../../rules/job/springs-past-card-lift.json' with { type: 'json' }
import f168 from '../../rules/job/springs-too-strong.json' with { type: 'json' }
import f169 from '../../rules/job/springs-too-weak.json' with { type: 'json' }
import f170 from '../../rules/job/springs-under-most.json' with { type: 'json' }
import f171 from '../../rules/job/springs-with-cam.json' with { type: 'json' }
import f172 from '../../rules/job/springs-within-card-lift.json' with { type: 'json' }
import f173 from '../../rules/job/stock-springs-changed-cam.json' with { type: 'json' }
import f174 from '../../rules/job/stud-upper-advised.json' with { type: 'json' }
import f175 from '../../rules/job/studs-convert-advised.json' with { type: 'json' }
import f176 from '../../rules/job/studs-convert.json' with { type: 'json' }
import f177 from '../../rules/job/studs-suit.json' with { type: 'json' }
import f178 from '../../rules/job/studs-upper-thread.json' with { type: 'json' }
import f179 from '../../rules/job/subjects.json' with { type: 'json' }
import f180 from '../../rules/job/umbrella-does.json' with { type: 'json' }
import f181 from '../../rules/job/umbrella-fallback.json' with { type: 'json' }
import f182 from '../../rules/job/valve-cleaning.json' with { type: 'json' }
import f183 from '../../rules/job/wash-aluminium.json' with { type: 'json' }
import f184 from '../../rules/job/wash-iron.json' with { type: 'json' }
import f185 from '../../rules/oil-pump/kind-differs.json' with { type: 'json' }
import f186 from '../../rules/oil-pump/looked-over.json' with { type: 'json' }
import f187 from '../../rules/oil-pump/properties.json' with { type: 'json' }
import f188 from '../../rules/oil-pump/spoiled.json' with { type: 'json' }
import f189 from '../../rules/phrases.json' with { type: 'json' }
import f190 from '../../rules/pushrod/bent-asks-why.json' with { type: 'json' }
import f191 from '../../rules/pushrod/bent.json' with { type: 'json' }
import f192 from '../../rules/pushrod/ends-ask-mates.json' with { type: 'json' }
import f193 from '../../rules/pushrod/ends-worn.json' with { type: 'json' }
import f194 from '../../rules/pushrod/limits.json' with { type: 'json' }
import f195 from '../../rules/pushrod/looks-sound.json' with { type: 'json' }
import f196 from '../../rules/pushrod/properties.json' with { type: 'json' }
import f197 from '../../rules/pushrod/rolls-doubtful.json' with { type: 'json' }
import f198 from '../../rules/pushrod/runout-asks-why.json' with { type: 'json' }
import f199 from '../../rules/pushrod/runs-out.json' with { type: 'json' }
import f200 from '../../rules/pushrod/side-asks-plate.json' with { type: 'json' }
import f201 from '../../rules/pushrod/side-worn.json' with { type: 'json' }
import f202 from '../../rules/pushrod/soft-in-plate.json' with { type: 'json' }
import f203 from '../../rules/pushrod/straight.json' with { type: 'json' }
import f204 from '../../rules/pushrod/suits-its-guide.json' with { type: 'json' }
import f205 from '../../rules/pushrod/was-straightened.json' with { type: 'json' }
import f206 from '../../rules/retainer/cap-misfits.json' with { type: 'json' }
import f207 from '../../rules/retainer/clears-seal.json' with { type: 'json' }
import f208 from '../../rules/retainer/cracked.json' with { type: 'json' }
import f209 from '../../rules/retainer/keepers-sink-deep.json' with { type: 'json' }
import f210 from '../../rules/retainer/keepers-sound.json' with { type: 'json' }
import f211 from '../../rules/retainer/keepers-stand-uneven.json' with { type: 'json' }
import f212 from '../../rules/retainer/keepers-worn.json' with { type: 'json' }
import f213 from '../../rules/retainer/limits.json' with { type: 'json' }
import f214 from '../../rules/retainer/looks-sound.json' with { type: 'json' }
import f215 from '../../rules/retainer/mixed-family.json' with { type: 'json' }
import f216 from '../../rules/retainer/multi-groove-gap.json' with { type: 'json' }
import f217 from '../../rules/retainer/offset-shifts.json' with { type: 'json' }
import f218 from '../../rules/retainer/properties.json' with { type: 'json' }
import f219 from '../../rules/retainer/rotator-stays.json' with { type: 'json' }
import f220 from '../../rules/retainer/rotator-swapped.json' with { type: 'json' }
import f221 from '../../rules/retainer/single-groove-touch.json' with { type: 'json' }
import f222 from '../../rules/retainer/strikes-seal.json' with { type: 'json' }
import f223 from '../../rules/retainer/taper-by-side.json' with { type: 'json' }
import f224 from '../../rules/retainer/worn-out.json' with { type: 'json' }
import f225 from '../../rules/rocker-stud/bent-stud.json' with { type: 'json' }
import f226 from '../../rules/rocker-stud/gauge-fails.json' with { type: 'json' }
import f227 from '../../rules/rocker-stud/groove-asks-pushrod.json' with { type: 'json' }
import f228 from '../../rules/rocker-stud/groove-condemns.json' with { type: 'json' }
import f229 from '../../rules/rocker-stud/groove-measured.json' with { type: 'json' }
import f230 from '../../rules/rocker-stud/limits.json' with { type: 'json' }
import f231 from '../../rules/rocker-stud/new-nut-slips.json' with { type: 'json' }
import f232 from '../../rules/rocker-stud/nut-drag-low.json' with { type: 'json' }
import f233 from '../../rules/rocker-stud/nut-holds.json' with { type: 'json' }
import f234 from '../../rules/rocker-stud/nut-runs-free.json' with { type: 'json' }
import f235 from '../../rules/rocker-stud/polish-looks-further.json' with { type: 'json' }
import f236 from '../../rules/rocker-stud/pressed-stud-loose.json' with { type: 'json' }
import f237 from '../../rules/rocker-stud/pressed-stud-proud.json' with { type: 'json' }
import f238 from '../../rules/rocker-stud/pressed-stud-watch.json' with { type: 'json' }
import f239 from '../../rules/rocker-stud/properties.json' with { type: 'json' }
import f240 from '../../rules/rocker-stud/screw-in-stud-loose.json' with { type: 'json' }
import f241 from '../../rules/rocker-stud/shoulder-smooth.json' with { type: 'json' }
import f242 from '../../rules/rocker-stud/stays-put.json' with { type: 'json' }
import f243 from '../../rules/rocker-stud/straight.json' with { type: 'json' }
import f244 from '../../rules/rocker-stud/thread-beyond-chasing.json' with { type: 'json' }
import f245 from '../../rules/rocker-stud/thread-chase.json' with { type: 'json' }
import f246 from '../../rules/rocker-stud/thread-crest-lost.json' with { type: 'json' }
import f247 from '../../rules/rocker-stud/thread-gauged.json' with { type: 'json' }
import f248 from '../../rules/rocker-stud/thread-pitch-off.json' with { type: 'json' }
import f249 from '../../rules/rocker-stud/thread-sound.json' with { type: 'json' }
import f250 from '../../rules/rocker-stud/thread-turns-lost.json' with { type: 'json' }
import f251 from '../../rules/rocker/cup-smooth.json' with { type: 'json' }
import f252 from '../../rules/rocker/cup-worn.json' with { type: 'json' }
import f253 from '../../rules/rocker/goes-with-grooved-stud.json' with { type: 'json' }
import f254 from '../../rules/rocker/goes-with-measured-groove.json' with { type: 'json' }
import f255 from '../../rules/rocker/limits.json' with { type: 'json' }
import f256 from '../../rules/rocker/out-of-true.json' with { type: 'json' }
import f257 from '../../rules/rocker/pad-marked-stamped.json' with { type: 'json' }
import f258 from '../../rules/rocker/pad-regrind.json' with { type: 'json' }
import f259 from '../../rules/rocker/pad-smooth.json' with { type: 'json' }
import f260 from '../../rules/rocker/pad-worn-out.json' with { type: 'json' }
import f261 from '../../rules/rocker/pivot-damaged.json' with { type: 'json' }
import f262 from '../../rules/rocker/pivot-one-sided.json' with { type: 'json' }
import f263 from '../../rules/rocker/pivot-smooth.json' with { type: 'json' }
import f264 from '../../rules/rocker/properties.json' with { type: 'json' }
import f265 from '../../rules/rocker/shaft-fits.json' with { type: 'json' }
import f266 from '../../rules/rocker/shaft-loose.json' with { type: 'json' }
import f267 from '../../rules/rocker/shaft-stepped.json' with { type: 'json' }
import f268 from '../../rules/rocker/slot-clearance.json' with { type: 'json' }
import f269 from '../../rules/rocker/slot-rubbed-end.json' with { type: 'json' }
import f270 from '../../rules/rocker/slot-rubbed-side.json' with { type: 'json' }
import f271 from '../../rules/rocker/slot-tight.json' with { type: 'json' }
import f272 from '../../rules/rocker/slot-unmarked.json' with { type: 'json' }
import f273 from '../../rules/rocker/track-off-centre.json' with { type: 'json' }
import f274 from '../../rules/rocker/track-offset-measured.json' with { type: 'json' }
import f275 from '../../rules/rocker/track-wide.json' with { type: 'json' }
import f276 from '../../rules/rocker/true-running.json' with { type: 'json' }
import f277 from '../../rules/seat/angle-off.json' with { type: 'json' }
import f278 from '../../rules/seat/angles-told.json' with { type: 'json' }
import f279 from '../../rules/seat/bare-inner-short.json' with { type: 'json' }
import f280 from '../../rules/seat/bare-outer-short.json' with { type: 'json' }
import f281 from '../../rules/seat/burned-recut.json' with { type: 'json' }
import f282 from '../../rules/seat/centre-high.json' with { type: 'json' }
import f283 from '../../rules/seat/centre-low.json' with { type: 'json' }
import f284 from '../../rules/seat/copper-dust.json' with { type: 'json' }
import f285 from '../../rules/seat/cracked.json' with { type: 'json' }
import f286 from '../../rules/seat/cut-as-planned.json' with { type: 'json' }
import f287 from '../../rules/seat/cut-hard-skin-tested.json' with { type: 'json' }
import f288 from '../../rules/seat/depth-known.json' with { type: 'json' }
import f289 from '../../rules/seat/dull-insert-noted.json' with { type: 'json' }
import f290 from '../../rules/seat/face-not-bare.json' with { type: 'json' }
import f291 from '../../rules/seat/face-not-true.json' with { type: 'json' }
import f292 from '../../rules/seat/film-on-seat-shows-face.json' with { type: 'json' }
import f293 from '../../rules/seat/gas-inserts-matched.json' with { type: 'json' }
import f294 from '../../rules/seat/guide-renewed.json' with { type: 'json' }
import f295 from '../../rules/seat/hard-skin-cut.json' with { type: 'json' }
import f296 from '../../rules/seat/head-takes-no-insert.json' with { type: 'json' }
import f297 from '../../rules/seat/insert-burned.json' with { type: 'json' }
import f298 from '../../rules/seat/insert-loose.json' with { type: 'json' }
import f299 from '../../rules/seat/insert-set-back.json' with { type: 'json' }
import f300 from '../../rules/seat/insert-too-loose.json' with { type: 'json' }
import f301 from '../../rules/seat/insert-too-tight.json' with { type: 'json' }
import f302 from '../../rules/seat/interference-on-gas.json' with { type: 'json' }
import f303 from '../../rules/seat/lash-closed.json' with { type: 'json' }
import f304 from '../../rules/seat/limits.json' with { type: 'json' }
import f305 from '../../rules/seat/looks-sound.json' with { type: 'json' }
import f306 from '../../rules/seat/new-insert.json' with { type: 'json' }
import f307 from '../../rules/seat/no-metal-left.json' with { type: 'json' }
import f308 from '../../rules/seat/not-all-round.json' with { type: 'json' }
import f309 from '../../rules/seat/pocketed.json' with { type: 'json' }
import f310 from '../../rules/seat/pour-test-weeps.json' with { type: 'json' }
import f311 from '../../rules/seat/properties.json' with { type: 'json' }
import f312 from '../../rules/seat/recut.json' with { type: 'json' }
import f313 from '../../rules/seat/ring-high.json' with { type: 'json' }
import f314 from '../../rules/seat/ring-looked-at.json' with { type: 'json' }
import f315 from '../../rules/seat/ring-low.json' with { type: 'json' }
import f316 from '../../rules/seat/ring-narrow-high.json' with { type: 'json' }
import f317 from '../../rules/seat/ring-narrow-low.json' with { type: 'json' }
import f318 from '../../rules/seat/ring-narrow.json' with { type: 'json' }
import f319 from '../../rules/seat/ring-wide.json' with { type: 'json' }
import f320 from '../../rules/seat/roundness-shown.json' with { type: 'json' }
import f321 from '../../rules/seat/runout-cause.json' with { type: 'json' }
import f322 from '../../rules/seat/runs-out.json' with { type: 'json' }
import f323 from '../../rules/seat/sinks-by-work.json' with { type: 'json' }
import f324 from '../../rules/seat/soft-and-sunk.json' with { type: 'json' }
import f325 from '../../rules/seat/soft-lash-closing.json' with { type: 'json' }
import f326 from '../../rules/seat/soft-on-gas.json' with { type: 'json' }
import f327 from '../../rules/seat/soft-on-petrol.json' with { type: 'json' }
import f328 from '../../rules/seat/soft-seat-watched.json' with { type: 'json' }
import f329 from '../../rules/seat/spun-shows-place.json' with { type: 'json' }
import f330 from '../../rules/seat/stock-spent.json' with { type: 'json' }
import f331 from '../../rules/seat/sunk-try-new-valve.json' with { type: 'json' }
import f332 from '../../rules/seat/sunk-with-new-valve.json' with { type: 'json' }
import f333 from '../../rules/seat/thirty-degree-seat.json' with { type: 'json' }
import f334 from '../../rules/seat/throat-cutter-too-flat.json' with { type: 'json' }
import f335 from '../../rules/seat/top-cutter-too-steep.json' with { type: 'json' }
import f336 from '../../rules/seat/vacuum-below-mates.json' with { type: 'json' }
import f337 from '../../rules/seat/vacuum-falls.json' with { type: 'json' }
import f338 from '../../rules/seat/vacuum-guide-open.json' with { type: 'json' }
import f339 from '../../rules/seat/vacuum-low.json' with { type: 'json' }
import f340 from '../../rules/sources/army-od1001.json' with { type: 'json' }
import f341 from '../../rules/sources/army-tm-1-1500-204-23-1.json' with { type: 'json' }
import f342 from '../../rules/sources/army-tm-1-1500-204-23-6.json' with { type: 'json' }
import f343 from '../../rules/sources/army-tm-1-1500-204-23-9.json' with { type: 'json' }
import f344 from '../../rules/sources/army-tm-10-3510-209-24.json' with { type: 'json' }
import f345 from '../../rules/sources/army-tm-10-3930-621-34.json' with { type: 'json' }
import f346 from '../../rules/sources/army-tm-10-3930-653-14.json' with { type: 'json' }
import f347 from '../../rules/sources/army-tm-10-3930-659-34.json' with { type: 'json' }
import f348 from '../../rules/sources/army-tm-10-3930-671-24.json' with { type: 'json' }
import f349 from '../../rules/sources/army-tm-5-1940-322-24.json' with { type: 'json' }
import f350 from '../../rules/sources/army-tm-5-3805-255-14.json' with { type: 'json' }
import f351 from '../../rules/sources/army-tm-5-3805-262-34.json' with { type: 'json' }
import f352 from '../../rules/sources/army-tm-5-3805-298-23-2.json' with { type: 'json' }
import f353 from '../../rules/sources/army-tm-5-3810-289-34-water-holes.json' with { type: 'json' }
import f354 from '../../rules/sources/army-tm-5-3810-289-34.json' with { type: 'json' }
import f355 from '../../rules/sources/army-tm-5-3810-295-34.json' with { type: 'json' }
import f356 from '../../rules/sources/army-tm-5-3810-306-34-head.json' with { type: 'json' }
import f357 from '../../rules/sources/army-tm-5-3810-306-34.json' with { type: 'json' }
import f358 from '../../rules/sources/army-tm-5-3820-256-24-5.json' with { type: 'json' }
import f359 from '../../rules/sources/army-tm-5-3825-230-14.json' with { type: 'json' }
import f360 from '../../rules/sources/army-tm-5-4320-240-15.json' with { type: 'json' }
import f361 from '../../rules/sources/army-tm-5-4320-300-14.json' with { type: 'json' }
import f362 from '../../rules/sources/army-tm-5-6115-400-35.json' with { type: 'json' }
import f363 from '../../rules/sources/army-tm-5-6115-593-34.json' with { type: 'json' }
import f364 from '../../rules/sources/army-tm-55-1905-223-24-5.json' with { type: 'json' }
import f365 from '../../rules/sources/army-tm-9-2320-260-34-1.json' with { type: 'json' }
import f366 from '../../rules/sources/army-tm-9-2320-366-34-4.json' with { type: 'json' }
import f367 from '../../rules/sources/army-tm-9-2815-254-24.json' with { type: 'json' }
import f368 from '../../rules/sources/army-tm-9-2815-255-24.json' with { type: 'json' }
import f369 from '../../rules/sources/army-tm-9-4310-397-14.json' with { type: 'json' }
import f370 from '../../rules/sources/army-tm-9-4940-549-14.json' with { type: 'json' }
import f371 from '../../rules/sources/army-tm-9-6115-604-34.json' with { type: 'json' }
import f372 from '../../rules/sources/army-tm-9-8000.json' with { type: 'json' }
import f373 from '../../rules/sources/astm-e1417.json' with { type: 'json' }
import f374 from '../../rules/sources/astm-e1444.json' with { type: 'json' }
import f375 from '../../rules/sources/clean-air-act.json' with { type: 'json' }
import f376 from '../../rules/sources/memory.json' with { type: 'json' }
import f377 from '../../rules/sources/navy-14076-lash-caps.json' with { type: 'json' }
import f378 from '../../rules/sources/navy-14329.json' with { type: 'json' }
import f379 from '../../rules/sources/navy-engineman-2-broken-valves.json' with { type: 'json' }
import f380 from '../../rules/sources/navy-engineman-2-pressure-tests.json' with { type: 'json' }
import f381 from '../../rules/sources/navy-navedtra-14076.json' with { type: 'json' }
import f382 from '../../rules/sources/normal-quantiles.json' with { type: 'json' }
import f383 from '../../rules/sources/osha-abrasive-wheels.json' with { type: 'json' }
import f384 from '../../rules/sources/osha-asbestos.json' with { type: 'json' }
import f385 from '../../rules/sources/osha-beryllium.json' with { type: 'json' }
import f386 from '../../rules/sources/osha-hydroxide.json' with { type: 'json' }
import f387 from '../../rules/sources/osha-lead.json' with { type: 'json' }
import f388 from '../../rules/sources/practice-air-held-valves.json' with { type: 'json' }
import f389 from '../../rules/sources/practice-annealed-heads.json' with { type: 'json' }
import f390 from '../../rules/sources/practice-blasting.json' with { type: 'json' }
import f391 from '../../rules/sources/practice-cam-change.json' with { type: 'json' }
import f392 from '../../rules/sources/practice-camshaft-look.json' with { type: 'json' }
import f393 from '../../rules/sources/practice-chamber-volumes.json' with { type: 'json' }
import f394 from '../../rules/sources/practice-charred-seals.json' with { type: 'json' }
import f395 from '../../rules/sources/practice-coil-bind.json' with { type: 'json' }
import f396 from '../../rules/sources/practice-cold-pressure-test.json' with { type: 'json' }
import f397 from '../../rules/sources/practice-core-plugs.json' with { type: 'json' }
import f398 from '../../rules/sources/practice-corroded-ports.json' with { type: 'json' }
import f399 from '../../rules/sources/practice-crack-repair.json' with { type: 'json' }
import f400 from '../../rules/sources/practice-crack-sites.json' with { type: 'json' }
import f401 from '../../rules/sources/practice-crack-test.json' with { type: 'json' }
import f402 from '../../rules/sources/practice-deck-finish.json' with { type: 'json' }
import f403 from '../../rules/sources/practice-deck-flatness.json' with { type: 'json' }
import f404 from '../../rules/sources/practice-first-run.json' with { type: 'json' }
import f405 from '../../rules/sources/practice-flat-tappet-change.json' with { type: 'json' }
import f406 from '../../rules/sources/practice-flat-tappet-loads.json' with { type: 'json' }
import f407 from '../../rules/sources/practice-gas-isolation.json' with { type: 'json' }
import f408 from '../../rules/sources/practice-gas-seats.json' with { type: 'json' }
import f409 from '../../rules/sources/practice-guide-clearance.json' with { type: 'json' }
import f410 from '../../rules/sources/practice-guide-fit.json' with { type: 'json' }
import f411 from '../../rules/sources/practice-guide-measuring.json' with { type: 'json' }
import f412 from '../../rules/sources/practice-guide-plate.json' with { type: 'json' }
import f413 from '../../rules/sources/practice-guide-repair.json' with { type: 'json' }
import f414 from '../../rules/sources/practice-guide-tops.json' with { type: 'json' }
import f415 from '../../rules/sources/practice-head-bolts.json' with { type: 'json' }
import f416 from '../../rules/sources/practice-head-thickness.json' with { type: 'json' }
import f417 from '../../rules/sources/practice-hot-parts.json' with { type: 'json' }
import f418 from '../../rules/sources/practice-intake-face.json' with { type: 'json' }
import f419 from '../../rules/sources/practice-keeper-families.json' with { type: 'json' }
import f420 from '../../rules/sources/practice-keeper-groove.json' with { type: 'json' }
import f421 from '../../rules/sources/practice-keepers.json' with { type: 'json' }
import f422 from '../../rules/sources/practice-leak-tests.json' with { type: 'json' }
import f423 from '../../rules/sources/practice-limits-of-advice.json' with { type: 'json' }
import f424 from '../../rules/sources/practice-missed-cracks.json' with { type: 'json' }
import f425 from '../../rules/sources/practice-offset-keepers.json' with { type: 'json' }
import f426 from '../../rules/sources/practice-oil-pump-look.json' with { type: 'json' }
import f427 from '../../rules/sources/practice-order-of-work.json' with { type: 'json' }
import f428 from '../../rules/sources/practice-plug-threads.json' with { type: 'json' }
import f429 from '../../rules/sources/practice-pump-seals.json' with { type: 'json' }
import f430 from '../../rules/sources/practice-pushrods.json' with { type: 'json' }
import f431 from '../../rules/sources/practice-retainer-seal-room.json' with { type: 'json' }
import f432 from '../../rules/sources/practice-rocker-fit.json' with { type: 'json' }
import f433 from '../../rules/sources/practice-rocker-lift.json' with { type: 'json' }
import f434 from '../../rules/sources/practice-rotators.json' with { type: 'json' }
import f435 from '../../rules/sources/practice-seal-kinds.json' with { type: 'json' }
import f436 from '../../rules/sources/practice-seal-set.json' with { type: 'json' }
import f437 from '../../rules/sources/practice-seal-spring-room.json' with { type: 'json' }
import f438 from '../../rules/sources/practice-seal-test.json' with { type: 'json' }
import f439 from '../../rules/sources/practice-seat-contact.json' with { type: 'json' }
import f440 from '../../rules/sources/practice-seat-cutters.json' with { type: 'json' }
import f441 from '../../rules/sources/practice-seat-inserts.json' with { type: 'json' }
import f442 from '../../rules/sources/practice-seat-sink.json' with { type: 'json' }
import f443 from '../../rules/sources/practice-seat-width.json' with { type: 'json' }
import f444 from '../../rules/sources/practice-side-play.json' with { type: 'json' }
import f445 from '../../rules/sources/practice-sodium-valves.json' with { type: 'json' }
import f446 from '../../rules/sources/practice-soft-seats.json' with { type: 'json' }
import f447 from '../../rules/sources/practice-special-valves.json' with { type: 'json' }
import f448 from '../../rules/sources/practice-spring-fit.json' with { type: 'json' }
import f449 from '../../rules/sources/practice-spring-height.json' with { type: 'json' }
import f450 from '../../rules/sources/practice-spring-match.json' with { type: 'json' }
import f451 from '../../rules/sources/practice-spring-test.json' with { type: 'json' }
import f452 from '../../rules/sources/practice-springs-at-overhaul.json' with { type: 'json' }
import f453 from '../../rules/sources/practice-stem-surface.json' with { type: 'json' }
import f454 from '../../rules/sources/practice-stem-wear.json' with { type: 'json' }
import f455 from '../../rules/sources/practice-straighten-first.json' with { type: 'json' }
import f456 from '../../rules/sources/practice-stud-breakage.json' with { type: 'json' }
import f457 from '../../rules/sources/practice-stud-groove.json' with { type: 'json' }
import f458 from '../../rules/sources/practice-stud-in-boss.json' with { type: 'json' }
import f459 from '../../rules/sources/practice-test-pressure.json' with { type: 'json' }
import f460 from '../../rules/sources/practice-thread-chase.json' with { type: 'json' }
import f461 from '../../rules/sources/practice-tip-allowance.json' with { type: 'json' }
import f462 from '../../rules/sources/practice-tip-stand.json' with { type: 'json' }
import f463 from '../../rules/sources/practice-titanium.json' with { type: 'json' }
import f464 from '../../rules/sources/practice-valve-cleaning.json' with { type: 'json' }
import f465 from '../../rules/sources/practice-valve-face.json' with { type: 'json' }
import f466 from '../../rules/sources/practice-valve-head.json' with { type: 'json' }
import f467 from '../../rules/sources/practice-valve-margin.json' with { type: 'json' }
import f468 from '../../rules/sources/practice-valve-tip.json' with { type: 'json' }
import f469 from '../../rules/sources/practice-wash-by-material.json' with { type: 'json' }
import f470 from '../../rules/sources/sae-710356.json' with { type: 'json' }
import f471 from '../../rules/sources/sae-871622.json' with { type: 'json' }
import f472 from '../../rules/sources/sae-932780.json' with { type: 'json' }
import f473 from '../../rules/sources/wang-1998-valve-seats.json' with { type: 'json' }
import f474 from '../../rules/spring/bind-margin-kept.json' with { type: 'json' }
import f475 from '../../rules/spring/binds.json' with { type: 'json' }
import f476 from '../../rules/spring/bright-spots-ask.json' with { type: 'json' }
import f477 from '../../rules/spring/damper-step.json' with { type: 'json' }
import f478 from '../../rules/spring/free-length-kept.json' with { type: 'json' }
import f479 from '../../rules/spring/height-shim.json' with { type: 'json' }
import f480 from '../../rules/spring/height-short.json' with { type: 'json' }
import f481 from '../../rules/spring/inside-smooth.json' with { type: 'json' }
import f482 from '../../rules/spring/limits.json' with { type: 'json' }
import f483 from '../../rules/spring/load-kept.json' with { type: 'json' }
import f484 from '../../rules/spring/odd-one-out.json' with { type: 'json' }
import f485 from '../../rules/spring/out-of-square.json' with { type: 'json' }
import f486 from '../../rules/spring/properties.json' with { type: 'json' }
import f487 from '../../rules/spring/stands-square.json' with { type: 'json' }
import f488 from '../../rules/spring/sunk-too-far.json' with { type: 'json' }
import f489 from '../../rules/spring/surface-fault.json' with { type: 'json' }
import f490 from '../../rules/spring/surface-sound.json' with { type: 'json' }
import f491 from '../../rules/spring/too-short.json' with { type: 'json' }
import f492 from '../../rules/spring/weak.json' with { type: 'json' }
import f493 from '../../rules/stem-seal/been-off.json' with { type: 'json' }
import f494 from '../../rules/stem-seal/charred.json' with { type: 'json' }
import f495 from '../../rules/stem-seal/failed.json' with { type: 'json' }
import f496 from '../../rules/stem-seal/is-o-ring.json' with { type: 'json' }
import f497 from '../../rules/stem-seal/is-positive.json' with { type: 'json' }
import f498 from '../../rules/stem-seal/is-umbrella.json' with { type: 'json' }
import f499 from '../../rules/stem-seal/properties.json' with { type: 'json' }
import f500 from '../../rules/stem-seal/undisturbed.json' with { type: 'json' }
import f501 from '../../rules/stem-seal/word-and-test-differ.json' with { type: 'json' }
import f502 from '../../rules/valve/clean-by-hand.json' with { type: 'json' }
import f503 from '../../rules/valve/crack-found.json' with { type: 'json' }
import f504 from '../../rules/valve/face-burned.json' with { type: 'json' }
import f505 from '../../rules/valve/face-not-ground.json' with { type: 'json' }
import f506 from '../../rules/valve/face-one-sided.json' with { type: 'json' }
import f507 from '../../rules/valve/face-refaced.json' with { type: 'json' }
import f508 from '../../rules/valve/face-stock-spent.json' with { type: 'json' }
import f509 from '../../rules/valve/face-through-facing.json' with { type: 'json' }
import f510 from '../../rules/valve/face-true.json' with { type: 'json' }
import f511 from '../../rules/valve/face-trued.json' with { type: 'json' }
import f512 from '../../rules/valve/face-untrue-not-ground.json' with { type: 'json' }
import f513 from '../../rules/valve/filled-valve-hold.json' with { type: 'json' }
import f514 from '../../rules/valve/filled-valve-mark.json' with { type: 'json' }
import f515 from '../../rules/valve/head-cracked.json' with { type: 'json' }
import f516 from '../../rules/valve/head-misshapen.json' with { type: 'json' }
import f517 from '../../rules/valve/head-struck.json' with { type: 'json' }
import f518 from '../../rules/valve/keeper-groove-holds.json' with { type: 'json' }
import f519 from '../../rules/valve/keeper-groove-loose.json' with { type: 'json' }
import f520 from '../../rules/valve/keeper-groove-worn.json' with { type: 'json' }
import f521 from '../../rules/valve/limits.json' with { type: 'json' }
import f522 from '../../rules/valve/looks-sound.json' with { type: 'json' }
import f523 from '../../rules/valve/margin-enough.json' with { type: 'json' }
import f524 from '../../rules/valve/margin-exhaust-thin.json' with { type: 'json' }
import f525 from '../../rules/valve/margin-gone-after-facing.json' with { type: 'json' }
import f526 from '../../rules/valve/margin-thin.json' with { type: 'json' }
import f527 from '../../rules/valve/mushroom-before-drawing.json' with { type: 'json' }
import f528 from '../../rules/valve/nitrided-not-ground.json' with { type: 'json' }
import f529 from '../../rules/valve/properties.json' with { type: 'json' }
import f530 from '../../rules/valve/stem-bent.json' with { type: 'json' }
import f531 from '../../rules/valve/stem-in-size.json' with { type: 'json' }
import f532 from '../../rules/valve/stem-necked.json' with { type: 'json' }
import f533 from '../../rules/valve/stem-nicks-coated.json' with { type: 'json' }
import f534 from '../../rules/valve/stem-nicks.json' with { type: 'json' }
import f535 from '../../rules/valve/stem-plating-worn.json' with { type: 'json' }
import f536 from '../../rules/valve/stem-runout-kept.json' with { type: 'json' }
import f537 from '../../rules/valve/stem-runout-over.json' with { type: 'json' }
import f538 from '../../rules/valve/stem-scored.json' with { type: 'json' }
import f539 from '../../rules/valve/stem-undersize.json' with { type: 'json' }
import f540 from '../../rules/valve/stem-wear-asks.json' with { type: 'json' }
import f541 from '../../rules/valve/tip-broken.json' with { type: 'json' }
import f542 from '../../rules/valve/tip-mushroomed.json' with { type: 'json' }
import f543 from '../../rules/valve/tip-no-stock.json' with { type: 'json' }
import f544 from '../../rules/valve/tip-not-ground.json' with { type: 'json' }
import f545 from '../../rules/valve/tip-reground.json' with { type: 'json' }
import f546 from '../../rules/valve/tip-soft.json' with { type: 'json' }
import f547 from '../../rules/valve/tip-stands-low.json' with { type: 'json' }
import f548 from '../../rules/valve/tip-stock.json' with { type: 'json' }
import f549 from '../../rules/valve/tip-taken-over.json' with { type: 'json' }
import f550 from '../../rules/valve/titanium-not-ground.json' with { type: 'json' }

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
  'guide/tool-shows-light.json': f48,
  'guide/top-too-big.json': f49,
  'guide/top-too-small.json': f50,
  'guide/top-wall-thin.json': f51,
  'guide/worn-replaced.json': f52,
  'guide/worn-restored.json': f53,
  'head/annealed.json': f54,
  'head/bowed-straighten.json': f55,
  'head/chambers-uneven.json': f56,
  'head/corroded-land.json': f57,
  'head/corroded-through.json': f58,
  'head/corrosion-deep.json': f59,
  'head/crack-accepted.json': f60,
  'head/crack-repaired.json': f61,
  'head/cracked-at-seat.json': f62,
  'head/cracked-elsewhere.json': f63,
  'head/deck-damaged.json': f64,
  'head/finish-rough.json': f65,
  'head/finish-smooth.json': f66,
  'head/flat-enough.json': f67,
  'head/hard-enough.json': f68,
  'head/jacket-tight.json': f69,
  'head/land-narrow.json': f70,
  'head/leak-at-plug.json': f71,
  'head/leak-at-stud-hole.json': f72,
  'head/leak-repaired.json': f73,
  'head/leak-through-casting.json': f74,
  'head/leaks-cold.json': f75,
  'head/leaks-hot.json': f76,
  'head/limits.json': f77,
  'head/looks-sound.json': f78,
  'head/magnetic-crack-unplaced.json': f79,
  'head/magnetic-says-nothing.json': f80,
  'head/magnetic-tested.json': f81,
  'head/manifold-face-warped.json': f82,
  'head/no-metal-to-flatten.json': f83,
  'head/over-flat.json': f84,
  'head/passed-cold.json': f85,
  'head/penetrant-crack-unplaced.json': f86,
  'head/penetrant-tested.json': f87,
  'head/plug-thread-spoiled.json': f88,
  'head/properties.json': f89,
  'head/ran-hot.json': f90,
  'head/tested-too-cold.json': f91,
  'head/tested-too-hard.json': f92,
  'head/tested-too-soft.json': f93,
  'head/thick-enough.json': f94,
  'head/too-thin.json': f95,
  'instruments.json': f96,
  'job/bind-roomy.json': f97,
  'job/blast-bead.json': f98,
  'job/blast-grit.json': f99,
  'job/bolt-washers-aluminium.json': f100,
  'job/bolts-bottom.json': f101,
  'job/called-aluminium-pulls.json': f102,
  'job/called-iron-no-pull.json': f103,
  'job/cam-card-known.json': f104,
  'job/cam-change-checks.json': f105,
  'job/camshaft-replaced.json': f106,
  'job/card-asks-springs.json': f107,
  'job/caustic-on-aluminium.json': f108,
  'job/crack-test-aluminium.json': f109,
  'job/crack-test-iron.json': f110,
  'job/deck-cut-clears-exhaust.json': f111,
  'job/deck-cut-clears-intake.json': f112,
  'job/deck-cut-compression.json': f113,
  'job/deck-cut-exhaust-too-close.json': f114,
  'job/deck-cut-intake-too-close.json': f115,
  'job/deck-cut-leaves-head.json': f116,
  'job/deck-cut-orders.json': f117,
  'job/deck-cut-too-deep.json': f118,
  'job/deck-cut-vee.json': f119,
  'job/drain-back-first.json': f120,
  'job/flat-tappets-kept.json': f121,
  'job/gas-fuel.json': f122,
  'job/guide-cut-too-deep.json': f123,
  'job/guide-top-cut-needed.json': f124,
  'job/guide-top-cut-planned.json': f125,
  'job/guide-top-for-seal.json': f126,
  'job/head-bolt-holes.json': f127,
  'job/inner-springs-bind.json': f128,
  'job/inner-springs-clear-bind.json': f129,
  'job/inner-too-big-for-outer.json': f130,
  'job/kit-complete.json': f131,
  'job/limits.json': f132,
  'job/metal-known.json': f133,
  'job/new-flat-tappets.json': f134,
  'job/o-ring-does.json': f135,
  'job/operations.json': f136,
  'job/order-of-work.json': f137,
  'job/piston-near-exhaust.json': f138,
  'job/piston-near-intake.json': f139,
  'job/positive-does.json': f140,
  'job/pressure-test-jacket.json': f141,
  'job/properties.json': f142,
  'job/pump-asks-positive.json': f143,
  'job/ratio-raised.json': f144,
  'job/retainers-with-springs.json': f145,
  'job/road-emissions.json': f146,
  'job/rockers-changed.json': f147,
  'job/rockers-past-lift.json': f148,
  'job/rockers-within-lift.json': f149,
  'job/roller-lifters.json': f150,
  'job/routine-work.json': f151,
  'job/seal-clearance.json': f152,
  'job/seal-clears-spring.json': f153,
  'job/seal-in-spring.json': f154,
  'job/seal-near-spring.json': f155,
  'job/seal-no-room.json': f156,
  'job/seal-remedies.json': f157,
  'job/seals-always-new.json': f158,
  'job/seals-head-on.json': f159,
  'job/seals-suit-pump.json': f160,
  'job/spring-loose-in-pocket.json': f161,
  'job/spring-too-big-for-pocket.json': f162,
  'job/springs-at-overhaul.json': f163,
  'job/springs-bind.json': f164,
  'job/springs-clear-bind.json': f165,
  'job/springs-over-least.json': f166,
  'job/springs-past-card-lift.json': f167,
  'job/springs-too-strong.json': f168,
  'job/springs-too-weak.json': f169,
  'job/springs-under-most.json': f170,
  'job/springs-with-cam.json': f171,
  'job/springs-within-card-lift.json': f172,
  'job/stock-springs-changed-cam.json': f173,
  'job/stud-upper-advised.json': f174,
  'job/studs-convert-advised.json': f175,
  'job/studs-convert.json': f176,
  'job/studs-suit.json': f177,
  'job/studs-upper-thread.json': f178,
  'job/subjects.json': f179,
  'job/umbrella-does.json': f180,
  'job/umbrella-fallback.json': f181,
  'job/valve-cleaning.json': f182,
  'job/wash-aluminium.json': f183,
  'job/wash-iron.json': f184,
  'oil-pump/kind-differs.json': f185,
  'oil-pump/looked-over.json': f186,
  'oil-pump/properties.json': f187,
  'oil-pump/spoiled.json': f188,
  'phrases.json': f189,
  'pushrod/bent-asks-why.json': f190,
  'pushrod/bent.json': f191,
  'pushrod/ends-ask-mates.json': f192,
  'pushrod/ends-worn.json': f193,
  'pushrod/limits.json': f194,
  'pushrod/looks-sound.json': f195,
  'pushrod/properties.json': f196,
  'pushrod/rolls-doubtful.json': f197,
  'pushrod/runout-asks-why.json': f198,
  'pushrod/runs-out.json': f199,
  'pushrod/side-asks-plate.json': f200,
  'pushrod/side-worn.json': f201,
  'pushrod/soft-in-plate.json': f202,
  'pushrod/straight.json': f203,
  'pushrod/suits-its-guide.json': f204,
  'pushrod/was-straightened.json': f205,
  'retainer/cap-misfits.json': f206,
  'retainer/clears-seal.json': f207,
  'retainer/cracked.json': f208,
  'retainer/keepers-sink-deep.json': f209,
  'retainer/keepers-sound.json': f210,
  'retainer/keepers-stand-uneven.json': f211,
  'retainer/keepers-worn.json': f212,
  'retainer/limits.json': f213,
  'retainer/looks-sound.json': f214,
  'retainer/mixed-family.json': f215,
  'retainer/multi-groove-gap.json': f216,
  'retainer/offset-shifts.json': f217,
  'retainer/properties.json': f218,
  'retainer/rotator-stays.json': f219,
  'retainer/rotator-swapped.json': f220,
  'retainer/single-groove-touch.json': f221,
  'retainer/strikes-seal.json': f222,
  'retainer/taper-by-side.json': f223,
  'retainer/worn-out.json': f224,
  'rocker-stud/bent-stud.json': f225,
  'rocker-stud/gauge-fails.json': f226,
  'rocker-stud/groove-asks-pushrod.json': f227,
  'rocker-stud/groove-condemns.json': f228,
  'rocker-stud/groove-measured.json': f229,
  'rocker-stud/limits.json': f230,
  'rocker-stud/new-nut-slips.json': f231,
  'rocker-stud/nut-drag-low.json': f232,
  'rocker-stud/nut-holds.json': f233,
  'rocker-stud/nut-runs-free.json': f234,
  'rocker-stud/polish-looks-further.json': f235,
  'rocker-stud/pressed-stud-loose.json': f236,
  'rocker-stud/pressed-stud-proud.json': f237,
  'rocker-stud/pressed-stud-watch.json': f238,
  'rocker-stud/properties.json': f239,
  'rocker-stud/screw-in-stud-loose.json': f240,
  'rocker-stud/shoulder-smooth.json': f241,
  'rocker-stud/stays-put.json': f242,
  'rocker-stud/straight.json': f243,
  'rocker-stud/thread-beyond-chasing.json': f244,
  'rocker-stud/thread-chase.json': f245,
  'rocker-stud/thread-crest-lost.json': f246,
  'rocker-stud/thread-gauged.json': f247,
  'rocker-stud/thread-pitch-off.json': f248,
  'rocker-stud/thread-sound.json': f249,
  'rocker-stud/thread-turns-lost.json': f250,
  'rocker/cup-smooth.json': f251,
  'rocker/cup-worn.json': f252,
  'rocker/goes-with-grooved-stud.json': f253,
  'rocker/goes-with-measured-groove.json': f254,
  'rocker/limits.json': f255,
  'rocker/out-of-true.json': f256,
  'rocker/pad-marked-stamped.json': f257,
  'rocker/pad-regrind.json': f258,
  'rocker/pad-smooth.json': f259,
  'rocker/pad-worn-out.json': f260,
  'rocker/pivot-damaged.json': f261,
  'rocker/pivot-one-sided.json': f262,
  'rocker/pivot-smooth.json': f263,
  'rocker/properties.json': f264,
  'rocker/shaft-fits.json': f265,
  'rocker/shaft-loose.json': f266,
  'rocker/shaft-stepped.json': f267,
  'rocker/slot-clearance.json': f268,
  'rocker/slot-rubbed-end.json': f269,
  'rocker/slot-rubbed-side.json': f270,
  'rocker/slot-tight.json': f271,
  'rocker/slot-unmarked.json': f272,
  'rocker/track-off-centre.json': f273,
  'rocker/track-offset-measured.json': f274,
  'rocker/track-wide.json': f275,
  'rocker/true-running.json': f276,
  'seat/angle-off.json': f277,
  'seat/angles-told.json': f278,
  'seat/bare-inner-short.json': f279,
  'seat/bare-outer-short.json': f280,
  'seat/burned-recut.json': f281,
  'seat/centre-high.json': f282,
  'seat/centre-low.json': f283,
  'seat/copper-dust.json': f284,
  'seat/cracked.json': f285,
  'seat/cut-as-planned.json': f286,
  'seat/cut-hard-skin-tested.json': f287,
  'seat/depth-known.json': f288,
  'seat/dull-insert-noted.json': f289,
  'seat/face-not-bare.json': f290,
  'seat/face-not-true.json': f291,
  'seat/film-on-seat-shows-face.json': f292,
  'seat/gas-inserts-matched.json': f293,
  'seat/guide-renewed.json': f294,
  'seat/hard-skin-cut.json': f295,
  'seat/head-takes-no-insert.json': f296,
  'seat/insert-burned.json': f297,
  'seat/insert-loose.json': f298,
  'seat/insert-set-back.json': f299,
  'seat/insert-too-loose.json': f300,
  'seat/insert-too-tight.json': f301,
  'seat/interference-on-gas.json': f302,
  'seat/lash-closed.json': f303,
  'seat/limits.json': f304,
  'seat/looks-sound.json': f305,
  'seat/new-insert.json': f306,
  'seat/no-metal-left.json': f307,
  'seat/not-all-round.json': f308,
  'seat/pocketed.json': f309,
  'seat/pour-test-weeps.json': f310,
  'seat/properties.json': f311,
  'seat/recut.json': f312,
  'seat/ring-high.json': f313,
  'seat/ring-looked-at.json': f314,
  'seat/ring-low.json': f315,
  'seat/ring-narrow-high.json': f316,
  'seat/ring-narrow-low.json': f317,
  'seat/ring-narrow.json': f318,
  'seat/ring-wide.json': f319,
  'seat/roundness-shown.json': f320,
  'seat/runout-cause.json': f321,
  'seat/runs-out.json': f322,
  'seat/sinks-by-work.json': f323,
  'seat/soft-and-sunk.json': f324,
  'seat/soft-lash-closing.json': f325,
  'seat/soft-on-gas.json': f326,
  'seat/soft-on-petrol.json': f327,
  'seat/soft-seat-watched.json': f328,
  'seat/spun-shows-place.json': f329,
  'seat/stock-spent.json': f330,
  'seat/sunk-try-new-valve.json': f331,
  'seat/sunk-with-new-valve.json': f332,
  'seat/thirty-degree-seat.json': f333,
  'seat/throat-cutter-too-flat.json': f334,
  'seat/top-cutter-too-steep.json': f335,
  'seat/vacuum-below-mates.json': f336,
  'seat/vacuum-falls.json': f337,
  'seat/vacuum-guide-open.json': f338,
  'seat/vacuum-low.json': f339,
  'sources/army-od1001.json': f340,
  'sources/army-tm-1-1500-204-23-1.json': f341,
  'sources/army-tm-1-1500-204-23-6.json': f342,
  'sources/army-tm-1-1500-204-23-9.json': f343,
  'sources/army-tm-10-3510-209-24.json': f344,
  'sources/army-tm-10-3930-621-34.json': f345,
  'sources/army-tm-10-3930-653-14.json': f346,
  'sources/army-tm-10-3930-659-34.json': f347,
  'sources/army-tm-10-3930-671-24.json': f348,
  'sources/army-tm-5-1940-322-24.json': f349,
  'sources/army-tm-5-3805-255-14.json': f350,
  'sources/army-tm-5-3805-262-34.json': f351,
  'sources/army-tm-5-3805-298-23-2.json': f352,
  'sources/army-tm-5-3810-289-34-water-holes.json': f353,
  'sources/army-tm-5-3810-289-34.json': f354,
  'sources/army-tm-5-3810-295-34.json': f355,
  'sources/army-tm-5-3810-306-34-head.json': f356,
  'sources/army-tm-5-3810-306-34.json': f357,
  'sources/army-tm-5-3820-256-24-5.json': f358,
  'sources/army-tm-5-3825-230-14.json': f359,
  'sources/army-tm-5-4320-240-15.json': f360,
  'sources/army-tm-5-4320-300-14.json': f361,
  'sources/army-tm-5-6115-400-35.json': f362,
  'sources/army-tm-5-6115-593-34.json': f363,
  'sources/army-tm-55-1905-223-24-5.json': f364,
  'sources/army-tm-9-2320-260-34-1.json': f365,
  'sources/army-tm-9-2320-366-34-4.json': f366,
  'sources/army-tm-9-2815-254-24.json': f367,
  'sources/army-tm-9-2815-255-24.json': f368,
  'sources/army-tm-9-4310-397-14.json': f369,
  'sources/army-tm-9-4940-549-14.json': f370,
  'sources/army-tm-9-6115-604-34.json': f371,
  'sources/army-tm-9-8000.json': f372,
  'sources/astm-e1417.json': f373,
  'sources/astm-e1444.json': f374,
  'sources/clean-air-act.json': f375,
  'sources/memory.json': f376,
  'sources/navy-14076-lash-caps.json': f377,
  'sources/navy-14329.json': f378,
  'sources/navy-engineman-2-broken-valves.json': f379,
  'sources/navy-engineman-2-pressure-tests.json': f380,
  'sources/navy-navedtra-14076.json': f381,
  'sources/normal-quantiles.json': f382,
  'sources/osha-abrasive-wheels.json': f383,
  'sources/osha-asbestos.json': f384,
  'sources/osha-beryllium.json': f385,
  'sources/osha-hydroxide.json': f386,
  'sources/osha-lead.json': f387,
  'sources/practice-air-held-valves.json': f388,
  'sources/practice-annealed-heads.json': f389,
  'sources/practice-blasting.json': f390,
  'sources/practice-cam-change.json': f391,
  'sources/practice-camshaft-look.json': f392,
  'sources/practice-chamber-volumes.json': f393,
  'sources/practice-charred-seals.json': f394,
  'sources/practice-coil-bind.json': f395,
  'sources/practice-cold-pressure-test.json': f396,
  'sources/practice-core-plugs.json': f397,
  'sources/practice-corroded-ports.json': f398,
  'sources/practice-crack-repair.json': f399,
  'sources/practice-crack-sites.json': f400,
  'sources/practice-crack-test.json': f401,
  'sources/practice-deck-finish.json': f402,
  'sources/practice-deck-flatness.json': f403,
  'sources/practice-first-run.json': f404,
  'sources/practice-flat-tappet-change.json': f405,
  'sources/practice-flat-tappet-loads.json': f406,
  'sources/practice-gas-isolation.json': f407,
  'sources/practice-gas-seats.json': f408,
  'sources/practice-guide-clearance.json': f409,
  'sources/practice-guide-fit.json': f410,
  'sources/practice-guide-measuring.json': f411,
  'sources/practice-guide-plate.json': f412,
  'sources/practice-guide-repair.json': f413,
  'sources/practice-guide-tops.json': f414,
  'sources/practice-head-bolts.json': f415,
  'sources/practice-head-thickness.json': f416,
  'sources/practice-hot-parts.json': f417,
  'sources/practice-intake-face.json': f418,
  'sources/practice-keeper-families.json': f419,
  'sources/practice-keeper-groove.json': f420,
  'sources/practice-keepers.json': f421,
  'sources/practice-leak-tests.json': f422,
  'sources/practice-limits-of-advice.json': f423,
  'sources/practice-missed-cracks.json': f424,
  'sources/practice-offset-keepers.json': f425,
  'sources/practice-oil-pump-look.json': f426,
  'sources/practice-order-of-work.json': f427,
  'sources/practice-plug-threads.json': f428,
  'sources/practice-pump-seals.json': f429,
  'sources/practice-pushrods.json': f430,
  'sources/practice-retainer-seal-room.json': f431,
  'sources/practice-rocker-fit.json': f432,
  'sources/practice-rocker-lift.json': f433,
  'sources/practice-rotators.json': f434,
  'sources/practice-seal-kinds.json': f435,
  'sources/practice-seal-set.json': f436,
  'sources/practice-seal-spring-room.json': f437,
  'sources/practice-seal-test.json': f438,
  'sources/practice-seat-contact.json': f439,
  'sources/practice-seat-cutters.json': f440,
  'sources/practice-seat-inserts.json': f441,
  'sources/practice-seat-sink.json': f442,
  'sources/practice-seat-width.json': f443,
  'sources/practice-side-play.json': f444,
  'sources/practice-sodium-valves.json': f445,
  'sources/practice-soft-seats.json': f446,
  'sources/practice-special-valves.json': f447,
  'sources/practice-spring-fit.json': f448,
  'sources/practice-spring-height.json': f449,
  'sources/practice-spring-match.json': f450,
  'sources/practice-spring-test.json': f451,
  'sources/practice-springs-at-overhaul.json': f452,
  'sources/practice-stem-surface.json': f453,
  'sources/practice-stem-wear.json': f454,
  'sources/practice-straighten-first.json': f455,
  'sources/practice-stud-breakage.json': f456,
  'sources/practice-stud-groove.json': f457,
  'sources/practice-stud-in-boss.json': f458,
  'sources/practice-test-pressure.json': f459,
  'sources/practice-thread-chase.json': f460,
  'sources/practice-tip-allowance.json': f461,
  'sources/practice-tip-stand.json': f462,
  'sources/practice-titanium.json': f463,
  'sources/practice-valve-cleaning.json': f464,
  'sources/practice-valve-face.json': f465,
  'sources/practice-valve-head.json': f466,
  'sources/practice-valve-margin.json': f467,
  'sources/practice-valve-tip.json': f468,
  'sources/practice-wash-by-material.json': f469,
  'sources/sae-710356.json': f470,
  'sources/sae-871622.json': f471,
  'sources/sae-932780.json': f472,
  'sources/wang-1998-valve-seats.json': f473,
  'spring/bind-margin-kept.json': f474,
  'spring/binds.json': f475,
  'spring/bright-spots-ask.json': f476,
  'spring/damper-step.json': f477,
  'spring/free-length-kept.json': f478,
  'spring/height-shim.json': f479,
  'spring/height-short.json': f480,
  'spring/inside-smooth.json': f481,
  'spring/limits.json': f482,
  'spring/load-kept.json': f483,
  'spring/odd-one-out.json': f484,
  'spring/out-of-square.json': f485,
  'spring/properties.json': f486,
  'spring/stands-square.json': f487,
  'spring/sunk-too-far.json': f488,
  'spring/surface-fault.json': f489,
  'spring/surface-sound.json': f490,
  'spring/too-short.json': f491,
  'spring/weak.json': f492,
  'stem-seal/been-off.json': f493,
  'stem-seal/charred.json': f494,
  'stem-seal/failed.json': f495,
  'stem-seal/is-o-ring.json': f496,
  'stem-seal/is-positive.json': f497,
  'stem-seal/is-umbrella.json': f498,
  'stem-seal/properties.json': f499,
  'stem-seal/undisturbed.json': f500,
  'stem-seal/word-and-test-differ.json': f501,
  'valve/clean-by-hand.json': f502,
  'valve/crack-found.json': f503,
  'valve/face-burned.json': f504,
  'valve/face-not-ground.json': f505,
  'valve/face-one-sided.json': f506,
  'valve/face-refaced.json': f507,
  'valve/face-stock-spent.json': f508,
  'valve/face-through-facing.json': f509,
  'valve/face-true.json': f510,
  'valve/face-trued.json': f511,
  'valve/face-untrue-not-ground.json': f512,
  'valve/filled-valve-hold.json': f513,
  'valve/filled-valve-mark.json': f514,
  'valve/head-cracked.json': f515,
  'valve/head-misshapen.json': f516,
  'valve/head-struck.json': f517,
  'valve/keeper-groove-holds.json': f518,
  'valve/keeper-groove-loose.json': f519,
  'valve/keeper-groove-worn.json': f520,
  'valve/limits.json': f521,
  'valve/looks-sound.json': f522,
  'valve/margin-enough.json': f523,
  'valve/margin-exhaust-thin.json': f524,
  'valve/margin-gone-after-facing.json': f525,
  'valve/margin-thin.json': f526,
  'valve/mushroom-before-drawing.json': f527,
  'valve/nitrided-not-ground.json': f528,
  'valve/properties.json': f529,
  'valve/stem-bent.json': f530,
  'valve/stem-in-size.json': f531,
  'valve/stem-necked.json': f532,
  'valve/stem-nicks-coated.json': f533,
  'valve/stem-nicks.json': f534,
  'valve/stem-plating-worn.json': f535,
  'valve/stem-runout-kept.json': f536,
  'valve/stem-runout-over.json': f537,
  'valve/stem-scored.json': f538,
  'valve/stem-undersize.json': f539,
  'valve/stem-wear-asks.json': f540,
  'valve/tip-broken.json': f541,
  'valve/tip-mushroomed.json': f542,
  'valve/tip-no-stock.json': f543,
  'valve/tip-not-ground.json': f544,
  'valve/tip-reground.json': f545,
  'valve/tip-soft.json': f546,
  'valve/tip-stands-low.json': f547,
  'valve/tip-stock.json': f548,
  'valve/tip-taken-over.json': f549,
  'valve/titanium-not-ground.json': f550,
}
