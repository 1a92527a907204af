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
import f18 from '../../rules/instruments.json' with { type: 'json' }
import f19 from '../../rules/job/bind-roomy.json' with { type: 'json' }
import f20 from '../../rules/job/cam-card-known.json' with { type: 'json' }
import f21 from '../../rules/job/cam-change-checks.json' with { type: 'json' }
import f22 from '../../rules/job/camshaft-replaced.json' with { type: 'json' }
import f23 from '../../rules/job/card-asks-springs.json' with { type: 'json' }
import f24 from '../../rules/job/crack-test-aluminium.json' with { type: 'json' }
import f25 from '../../rules/job/crack-test-iron.json' with { type: 'json' }
import f26 from '../../rules/job/drain-back-first.json' with { type: 'json' }
import f27 from '../../rules/job/flat-tappets-kept.json' with { type: 'json' }
import f28 from '../../rules/job/gas-fuel.json' with { type: 'json' }
import f29 from '../../rules/job/guide-cut-too-deep.json' with { type: 'json' }
import f30 from '../../rules/job/guide-top-cut-needed.json' with { type: 'json' }
import f31 from '../../rules/job/guide-top-cut-planned.json' with { type: 'json' }
import f32 from '../../rules/job/guide-top-for-seal.json' with { type: 'json' }
import f33 from '../../rules/job/inner-springs-bind.json' with { type: 'json' }
import f34 from '../../rules/job/inner-springs-clear-bind.json' with { type: 'json' }
import f35 from '../../rules/job/inner-too-big-for-outer.json' with { type: 'json' }
import f36 from '../../rules/job/kit-complete.json' with { type: 'json' }
import f37 from '../../rules/job/limits.json' with { type: 'json' }
import f38 from '../../rules/job/metal-known.json' with { type: 'json' }
import f39 from '../../rules/job/new-flat-tappets.json' with { type: 'json' }
import f40 from '../../rules/job/o-ring-does.json' with { type: 'json' }
import f41 from '../../rules/job/operations.json' with { type: 'json' }
import f42 from '../../rules/job/order-of-work.json' with { type: 'json' }
import f43 from '../../rules/job/positive-does.json' with { type: 'json' }
import f44 from '../../rules/job/pressure-test-jacket.json' with { type: 'json' }
import f45 from '../../rules/job/properties.json' with { type: 'json' }
import f46 from '../../rules/job/pump-asks-positive.json' with { type: 'json' }
import f47 from '../../rules/job/ratio-raised.json' with { type: 'json' }
import f48 from '../../rules/job/road-emissions.json' with { type: 'json' }
import f49 from '../../rules/job/rockers-changed.json' with { type: 'json' }
import f50 from '../../rules/job/rockers-past-lift.json' with { type: 'json' }
import f51 from '../../rules/job/rockers-within-lift.json' with { type: 'json' }
import f52 from '../../rules/job/roller-lifters.json' with { type: 'json' }
import f53 from '../../rules/job/routine-work.json' with { type: 'json' }
import f54 from '../../rules/job/seal-clearance.json' with { type: 'json' }
import f55 from '../../rules/job/seal-clears-spring.json' with { type: 'json' }
import f56 from '../../rules/job/seal-in-spring.json' with { type: 'json' }
import f57 from '../../rules/job/seal-near-spring.json' with { type: 'json' }
import f58 from '../../rules/job/seal-no-room.json' with { type: 'json' }
import f59 from '../../rules/job/seal-remedies.json' with { type: 'json' }
import f60 from '../../rules/job/seals-always-new.json' with { type: 'json' }
import f61 from '../../rules/job/seals-head-on.json' with { type: 'json' }
import f62 from '../../rules/job/seals-suit-pump.json' with { type: 'json' }
import f63 from '../../rules/job/spring-loose-in-pocket.json' with { type: 'json' }
import f64 from '../../rules/job/spring-too-big-for-pocket.json' with { type: 'json' }
import f65 from '../../rules/job/springs-at-overhaul.json' with { type: 'json' }
import f66 from '../../rules/job/springs-bind.json' with { type: 'json' }
import f67 from '../../rules/job/springs-clear-bind.json' with { type: 'json' }
import f68 from '../../rules/job/springs-over-least.json' with { type: 'json' }
import f69 from '../../rules/job/springs-past-card-lift.json' with { type: 'json' }
import f70 from '../../rules/job/springs-too-strong.json' with { type: 'json' }
import f71 from '../../rules/job/springs-too-weak.json' with { type: 'json' }
import f72 from '../../rules/job/springs-under-most.json' with { type: 'json' }
import f73 from '../../rules/job/springs-with-cam.json' with { type: 'json' }
import f74 from '../../rules/job/springs-within-card-lift.json' with { type: 'json' }
import f75 from '../../rules/job/stock-springs-changed-cam.json' with { type: 'json' }
import f76 from '../../rules/job/stud-upper-advised.json' with { type: 'json' }
import f77 from '../../rules/job/studs-convert-advised.json' with { type: 'json' }
import f78 from '../../rules/job/studs-convert.json' with { type: 'json' }
import f79 from '../../rules/job/studs-suit.json' with { type: 'json' }
import f80 from '../../rules/job/studs-upper-thread.json' with { type: 'json' }
import f81 from '../../rules/job/subjects.json' with { type: 'json' }
import f82 from '../../rules/job/umbrella-does.json' with { type: 'json' }
import f83 from '../../rules/job/umbrella-fallback.json' with { type: 'json' }
import f84 from '../../rules/job/wash-aluminium.json' with { type: 'json' }
import f85 from '../../rules/job/wash-iron.json' with { type: 'json' }
import f86 from '../../rules/oil-pump/kind-differs.json' with { type: 'json' }
import f87 from '../../rules/oil-pump/looked-over.json' with { type: 'json' }
import f88 from '../../rules/oil-pump/properties.json' with { type: 'json' }
import f89 from '../../rules/oil-pump/spoiled.json' with { type: 'json' }
import f90 from '../../rules/phrases.json' with { type: 'json' }
import f91 from '../../rules/retainer/cracked.json' with { type: 'json' }
import f92 from '../../rules/retainer/keepers-sink-deep.json' with { type: 'json' }
import f93 from '../../rules/retainer/keepers-sound.json' with { type: 'json' }
import f94 from '../../rules/retainer/keepers-stand-uneven.json' with { type: 'json' }
import f95 from '../../rules/retainer/keepers-worn.json' with { type: 'json' }
import f96 from '../../rules/retainer/limits.json' with { type: 'json' }
import f97 from '../../rules/retainer/looks-sound.json' with { type: 'json' }
import f98 from '../../rules/retainer/multi-groove-gap.json' with { type: 'json' }
import f99 from '../../rules/retainer/properties.json' with { type: 'json' }
import f100 from '../../rules/retainer/single-groove-touch.json' with { type: 'json' }
import f101 from '../../rules/retainer/worn-out.json' with { type: 'json' }
import f102 from '../../rules/rocker-stud/bent-stud.json' with { type: 'json' }
import f103 from '../../rules/rocker-stud/gauge-fails.json' with { type: 'json' }
import f104 from '../../rules/rocker-stud/groove-condemns.json' with { type: 'json' }
import f105 from '../../rules/rocker-stud/groove-measured.json' with { type: 'json' }
import f106 from '../../rules/rocker-stud/limits.json' with { type: 'json' }
import f107 from '../../rules/rocker-stud/new-nut-slips.json' with { type: 'json' }
import f108 from '../../rules/rocker-stud/nut-drag-low.json' with { type: 'json' }
import f109 from '../../rules/rocker-stud/nut-holds.json' with { type: 'json' }
import f110 from '../../rules/rocker-stud/nut-runs-free.json' with { type: 'json' }
import f111 from '../../rules/rocker-stud/polish-looks-further.json' with { type: 'json' }
import f112 from '../../rules/rocker-stud/pressed-stud-loose.json' with { type: 'json' }
import f113 from '../../rules/rocker-stud/pressed-stud-proud.json' with { type: 'json' }
import f114 from '../../rules/rocker-stud/pressed-stud-watch.json' with { type: 'json' }
import f115 from '../../rules/rocker-stud/properties.json' with { type: 'json' }
import f116 from '../../rules/rocker-stud/screw-in-stud-loose.json' with { type: 'json' }
import f117 from '../../rules/rocker-stud/shoulder-smooth.json' with { type: 'json' }
import f118 from '../../rules/rocker-stud/stays-put.json' with { type: 'json' }
import f119 from '../../rules/rocker-stud/straight.json' with { type: 'json' }
import f120 from '../../rules/rocker-stud/thread-beyond-chasing.json' with { type: 'json' }
import f121 from '../../rules/rocker-stud/thread-chase.json' with { type: 'json' }
import f122 from '../../rules/rocker-stud/thread-crest-lost.json' with { type: 'json' }
import f123 from '../../rules/rocker-stud/thread-gauged.json' with { type: 'json' }
import f124 from '../../rules/rocker-stud/thread-pitch-off.json' with { type: 'json' }
import f125 from '../../rules/rocker-stud/thread-sound.json' with { type: 'json' }
import f126 from '../../rules/rocker-stud/thread-turns-lost.json' with { type: 'json' }
import f127 from '../../rules/rocker/goes-with-grooved-stud.json' with { type: 'json' }
import f128 from '../../rules/rocker/goes-with-measured-groove.json' with { type: 'json' }
import f129 from '../../rules/rocker/limits.json' with { type: 'json' }
import f130 from '../../rules/rocker/out-of-true.json' with { type: 'json' }
import f131 from '../../rules/rocker/pad-marked-stamped.json' with { type: 'json' }
import f132 from '../../rules/rocker/pad-regrind.json' with { type: 'json' }
import f133 from '../../rules/rocker/pad-smooth.json' with { type: 'json' }
import f134 from '../../rules/rocker/pad-worn-out.json' with { type: 'json' }
import f135 from '../../rules/rocker/pivot-damaged.json' with { type: 'json' }
import f136 from '../../rules/rocker/pivot-one-sided.json' with { type: 'json' }
import f137 from '../../rules/rocker/pivot-smooth.json' with { type: 'json' }
import f138 from '../../rules/rocker/properties.json' with { type: 'json' }
import f139 from '../../rules/rocker/slot-clearance.json' with { type: 'json' }
import f140 from '../../rules/rocker/slot-rubbed-end.json' with { type: 'json' }
import f141 from '../../rules/rocker/slot-rubbed-side.json' with { type: 'json' }
import f142 from '../../rules/rocker/slot-tight.json' with { type: 'json' }
import f143 from '../../rules/rocker/slot-unmarked.json' with { type: 'json' }
import f144 from '../../rules/rocker/track-off-centre.json' with { type: 'json' }
import f145 from '../../rules/rocker/track-offset-measured.json' with { type: 'json' }
import f146 from '../../rules/rocker/track-wide.json' with { type: 'json' }
import f147 from '../../rules/rocker/true-running.json' with { type: 'json' }
import f148 from '../../rules/sources/army-tm-1-1500-204-23-1.json' with { type: 'json' }
import f149 from '../../rules/sources/army-tm-1-1500-204-23-6.json' with { type: 'json' }
import f150 from '../../rules/sources/army-tm-1-1500-204-23-9.json' with { type: 'json' }
import f151 from '../../rules/sources/army-tm-10-3510-209-24.json' with { type: 'json' }
import f152 from '../../rules/sources/army-tm-10-3930-621-34.json' with { type: 'json' }
import f153 from '../../rules/sources/army-tm-10-3930-659-34.json' with { type: 'json' }
import f154 from '../../rules/sources/army-tm-10-3930-671-24.json' with { type: 'json' }
import f155 from '../../rules/sources/army-tm-5-1940-322-24.json' with { type: 'json' }
import f156 from '../../rules/sources/army-tm-5-3805-262-34.json' with { type: 'json' }
import f157 from '../../rules/sources/army-tm-5-3805-298-23-2.json' with { type: 'json' }
import f158 from '../../rules/sources/army-tm-5-3810-306-34.json' with { type: 'json' }
import f159 from '../../rules/sources/army-tm-5-3820-256-24-5.json' with { type: 'json' }
import f160 from '../../rules/sources/army-tm-9-2320-260-34-1.json' with { type: 'json' }
import f161 from '../../rules/sources/army-tm-9-2320-366-34-4.json' with { type: 'json' }
import f162 from '../../rules/sources/army-tm-9-4310-397-14.json' with { type: 'json' }
import f163 from '../../rules/sources/army-tm-9-6115-604-34.json' with { type: 'json' }
import f164 from '../../rules/sources/army-tm-9-8000.json' with { type: 'json' }
import f165 from '../../rules/sources/clean-air-act.json' with { type: 'json' }
import f166 from '../../rules/sources/memory.json' with { type: 'json' }
import f167 from '../../rules/sources/navy-engineman-2-broken-valves.json' with { type: 'json' }
import f168 from '../../rules/sources/navy-navedtra-14076.json' with { type: 'json' }
import f169 from '../../rules/sources/normal-quantiles.json' with { type: 'json' }
import f170 from '../../rules/sources/osha-abrasive-wheels.json' with { type: 'json' }
import f171 from '../../rules/sources/osha-asbestos.json' with { type: 'json' }
import f172 from '../../rules/sources/osha-beryllium.json' with { type: 'json' }
import f173 from '../../rules/sources/osha-lead.json' with { type: 'json' }
import f174 from '../../rules/sources/practice-air-held-valves.json' with { type: 'json' }
import f175 from '../../rules/sources/practice-cam-change.json' with { type: 'json' }
import f176 from '../../rules/sources/practice-camshaft-look.json' with { type: 'json' }
import f177 from '../../rules/sources/practice-charred-seals.json' with { type: 'json' }
import f178 from '../../rules/sources/practice-coil-bind.json' with { type: 'json' }
import f179 from '../../rules/sources/practice-crack-test.json' with { type: 'json' }
import f180 from '../../rules/sources/practice-first-run.json' with { type: 'json' }
import f181 from '../../rules/sources/practice-flat-tappet-change.json' with { type: 'json' }
import f182 from '../../rules/sources/practice-flat-tappet-loads.json' with { type: 'json' }
import f183 from '../../rules/sources/practice-gas-isolation.json' with { type: 'json' }
import f184 from '../../rules/sources/practice-guide-plate.json' with { type: 'json' }
import f185 from '../../rules/sources/practice-guide-tops.json' with { type: 'json' }
import f186 from '../../rules/sources/practice-hot-parts.json' with { type: 'json' }
import f187 from '../../rules/sources/practice-keeper-groove.json' with { type: 'json' }
import f188 from '../../rules/sources/practice-keepers.json' with { type: 'json' }
import f189 from '../../rules/sources/practice-limits-of-advice.json' with { type: 'json' }
import f190 from '../../rules/sources/practice-missed-cracks.json' with { type: 'json' }
import f191 from '../../rules/sources/practice-oil-pump-look.json' with { type: 'json' }
import f192 from '../../rules/sources/practice-order-of-work.json' with { type: 'json' }
import f193 from '../../rules/sources/practice-pump-seals.json' with { type: 'json' }
import f194 from '../../rules/sources/practice-retainer-seal-room.json' with { type: 'json' }
import f195 from '../../rules/sources/practice-rocker-fit.json' with { type: 'json' }
import f196 from '../../rules/sources/practice-rocker-lift.json' with { type: 'json' }
import f197 from '../../rules/sources/practice-seal-kinds.json' with { type: 'json' }
import f198 from '../../rules/sources/practice-seal-set.json' with { type: 'json' }
import f199 from '../../rules/sources/practice-seal-spring-room.json' with { type: 'json' }
import f200 from '../../rules/sources/practice-seal-test.json' with { type: 'json' }
import f201 from '../../rules/sources/practice-sodium-valves.json' with { type: 'json' }
import f202 from '../../rules/sources/practice-special-valves.json' with { type: 'json' }
import f203 from '../../rules/sources/practice-spring-fit.json' with { type: 'json' }
import f204 from '../../rules/sources/practice-spring-height.json' with { type: 'json' }
import f205 from '../../rules/sources/practice-spring-match.json' with { type: 'json' }
import f206 from '../../rules/sources/practice-spring-test.json' with { type: 'json' }
import f207 from '../../rules/sources/practice-springs-at-overhaul.json' with { type: 'json' }
import f208 from '../../rules/sources/practice-stem-surface.json' with { type: 'json' }
import f209 from '../../rules/sources/practice-stem-wear.json' with { type: 'json' }
import f210 from '../../rules/sources/practice-stud-breakage.json' with { type: 'json' }
import f211 from '../../rules/sources/practice-stud-groove.json' with { type: 'json' }
import f212 from '../../rules/sources/practice-stud-in-boss.json' with { type: 'json' }
import f213 from '../../rules/sources/practice-test-pressure.json' with { type: 'json' }
import f214 from '../../rules/sources/practice-thread-chase.json' with { type: 'json' }
import f215 from '../../rules/sources/practice-tip-allowance.json' with { type: 'json' }
import f216 from '../../rules/sources/practice-tip-stand.json' with { type: 'json' }
import f217 from '../../rules/sources/practice-titanium.json' with { type: 'json' }
import f218 from '../../rules/sources/practice-valve-face.json' with { type: 'json' }
import f219 from '../../rules/sources/practice-valve-head.json' with { type: 'json' }
import f220 from '../../rules/sources/practice-valve-margin.json' with { type: 'json' }
import f221 from '../../rules/sources/practice-valve-tip.json' with { type: 'json' }
import f222 from '../../rules/sources/practice-wash-by-material.json' with { type: 'json' }
import f223 from '../../rules/spring/bind-margin-kept.json' with { type: 'json' }
import f224 from '../../rules/spring/binds.json' with { type: 'json' }
import f225 from '../../rules/spring/bright-spots-ask.json' with { type: 'json' }
import f226 from '../../rules/spring/damper-step.json' with { type: 'json' }
import f227 from '../../rules/spring/free-length-kept.json' with { type: 'json' }
import f228 from '../../rules/spring/height-shim.json' with { type: 'json' }
import f229 from '../../rules/spring/height-short.json' with { type: 'json' }
import f230 from '../../rules/spring/inside-smooth.json' with { type: 'json' }
import f231 from '../../rules/spring/limits.json' with { type: 'json' }
import f232 from '../../rules/spring/load-kept.json' with { type: 'json' }
import f233 from '../../rules/spring/odd-one-out.json' with { type: 'json' }
import f234 from '../../rules/spring/out-of-square.json' with { type: 'json' }
import f235 from '../../rules/spring/properties.json' with { type: 'json' }
import f236 from '../../rules/spring/stands-square.json' with { type: 'json' }
import f237 from '../../rules/spring/sunk-too-far.json' with { type: 'json' }
import f238 from '../../rules/spring/surface-fault.json' with { type: 'json' }
import f239 from '../../rules/spring/surface-sound.json' with { type: 'json' }
import f240 from '../../rules/spring/too-short.json' with { type: 'json' }
import f241 from '../../rules/spring/weak.json' with { type: 'json' }
import f242 from '../../rules/stem-seal/been-off.json' with { type: 'json' }
import f243 from '../../rules/stem-seal/charred.json' with { type: 'json' }
import f244 from '../../rules/stem-seal/failed.json' with { type: 'json' }
import f245 from '../../rules/stem-seal/is-o-ring.json' with { type: 'json' }
import f246 from '../../rules/stem-seal/is-positive.json' with { type: 'json' }
import f247 from '../../rules/stem-seal/is-umbrella.json' with { type: 'json' }
import f248 from '../../rules/stem-seal/properties.json' with { type: 'json' }
import f249 from '../../rules/stem-seal/undisturbed.json' with { type: 'json' }
import f250 from '../../rules/stem-seal/word-and-test-differ.json' with { type: 'json' }
import f251 from '../../rules/valve/crack-found.json' with { type: 'json' }
import f252 from '../../rules/valve/face-burned.json' with { type: 'json' }
import f253 from '../../rules/valve/face-not-ground.json' with { type: 'json' }
import f254 from '../../rules/valve/face-one-sided.json' with { type: 'json' }
import f255 from '../../rules/valve/face-refaced.json' with { type: 'json' }
import f256 from '../../rules/valve/face-stock-spent.json' with { type: 'json' }
import f257 from '../../rules/valve/face-through-facing.json' with { type: 'json' }
import f258 from '../../rules/valve/face-true.json' with { type: 'json' }
import f259 from '../../rules/valve/face-trued.json' with { type: 'json' }
import f260 from '../../rules/valve/face-untrue-not-ground.json' with { type: 'json' }
import f261 from '../../rules/valve/filled-valve-hold.json' with { type: 'json' }
import f262 from '../../rules/valve/filled-valve-mark.json' with { type: 'json' }
import f263 from '../../rules/valve/head-cracked.json' with { type: 'json' }
import f264 from '../../rules/valve/head-misshapen.json' with { type: 'json' }
import f265 from '../../rules/valve/head-struck.json' with { type: 'json' }
import f266 from '../../rules/valve/keeper-groove-holds.json' with { type: 'json' }
import f267 from '../../rules/valve/keeper-groove-loose.json' with { type: 'json' }
import f268 from '../../rules/valve/keeper-groove-worn.json' with { type: 'json' }
import f269 from '../../rules/valve/limits.json' with { type: 'json' }
import f270 from '../../rules/valve/looks-sound.json' with { type: 'json' }
import f271 from '../../rules/valve/margin-enough.json' with { type: 'json' }
import f272 from '../../rules/valve/margin-exhaust-thin.json' with { type: 'json' }
import f273 from '../../rules/valve/margin-gone-after-facing.json' with { type: 'json' }
import f274 from '../../rules/valve/margin-thin.json' with { type: 'json' }
import f275 from '../../rules/valve/mushroom-before-drawing.json' with { type: 'json' }
import f276 from '../../rules/valve/nitrided-not-ground.json' with { type: 'json' }
import f277 from '../../rules/valve/properties.json' with { type: 'json' }
import f278 from '../../rules/valve/stem-bent.json' with { type: 'json' }
import f279 from '../../rules/valve/stem-in-size.json' with { type: 'json' }
import f280 from '../../rules/valve/stem-necked.json' with { type: 'json' }
import f281 from '../../rules/valve/stem-nicks-coated.json' with { type: 'json' }
import f282 from '../../rules/valve/stem-nicks.json' with { type: 'json' }
import f283 from '../../rules/valve/stem-plating-worn.json' with { type: 'json' }
import f284 from '../../rules/valve/stem-runout-over.json' with { type: 'json' }
import f285 from '../../rules/valve/stem-scored.json' with { type: 'json' }
import f286 from '../../rules/valve/stem-undersize.json' with { type: 'json' }
import f287 from '../../rules/valve/stem-wear-asks.json' with { type: 'json' }
import f288 from '../../rules/valve/tip-broken.json' with { type: 'json' }
import f289 from '../../rules/valve/tip-mushroomed.json' with { type: 'json' }
import f290 from '../../rules/valve/tip-no-stock.json' with { type: 'json' }
import f291 from '../../rules/valve/tip-not-ground.json' with { type: 'json' }
import f292 from '../../rules/valve/tip-reground.json' with { type: 'json' }
import f293 from '../../rules/valve/tip-soft.json' with { type: 'json' }
import f294 from '../../rules/valve/tip-stands-low.json' with { type: 'json' }
import f295 from '../../rules/valve/tip-stock.json' with { type: 'json' }
import f296 from '../../rules/valve/tip-taken-over.json' with { type: 'json' }
import f297 from '../../rules/valve/titanium-not-ground.json' with { type: 'json' }

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
  'instruments.json': f18,
  'job/bind-roomy.json': f19,
  'job/cam-card-known.json': f20,
  'job/cam-change-checks.json': f21,
  'job/camshaft-replaced.json': f22,
  'job/card-asks-springs.json': f23,
  'job/crack-test-aluminium.json': f24,
  'job/crack-test-iron.json': f25,
  'job/drain-back-first.json': f26,
  'job/flat-tappets-kept.json': f27,
  'job/gas-fuel.json': f28,
  'job/guide-cut-too-deep.json': f29,
  'job/guide-top-cut-needed.json': f30,
  'job/guide-top-cut-planned.json': f31,
  'job/guide-top-for-seal.json': f32,
  'job/inner-springs-bind.json': f33,
  'job/inner-springs-clear-bind.json': f34,
  'job/inner-too-big-for-outer.json': f35,
  'job/kit-complete.json': f36,
  'job/limits.json': f37,
  'job/metal-known.json': f38,
  'job/new-flat-tappets.json': f39,
  'job/o-ring-does.json': f40,
  'job/operations.json': f41,
  'job/order-of-work.json': f42,
  'job/positive-does.json': f43,
  'job/pressure-test-jacket.json': f44,
  'job/properties.json': f45,
  'job/pump-asks-positive.json': f46,
  'job/ratio-raised.json': f47,
  'job/road-emissions.json': f48,
  'job/rockers-changed.json': f49,
  'job/rockers-past-lift.json': f50,
  'job/rockers-within-lift.json': f51,
  'job/roller-lifters.json': f52,
  'job/routine-work.json': f53,
  'job/seal-clearance.json': f54,
  'job/seal-clears-spring.json': f55,
  'job/seal-in-spring.json': f56,
  'job/seal-near-spring.json': f57,
  'job/seal-no-room.json': f58,
  'job/seal-remedies.json': f59,
  'job/seals-always-new.json': f60,
  'job/seals-head-on.json': f61,
  'job/seals-suit-pump.json': f62,
  'job/spring-loose-in-pocket.json': f63,
  'job/spring-too-big-for-pocket.json': f64,
  'job/springs-at-overhaul.json': f65,
  'job/springs-bind.json': f66,
  'job/springs-clear-bind.json': f67,
  'job/springs-over-least.json': f68,
  'job/springs-past-card-lift.json': f69,
  'job/springs-too-strong.json': f70,
  'job/springs-too-weak.json': f71,
  'job/springs-under-most.json': f72,
  'job/springs-with-cam.json': f73,
  'job/springs-within-card-lift.json': f74,
  'job/stock-springs-changed-cam.json': f75,
  'job/stud-upper-advised.json': f76,
  'job/studs-convert-advised.json': f77,
  'job/studs-convert.json': f78,
  'job/studs-suit.json': f79,
  'job/studs-upper-thread.json': f80,
  'job/subjects.json': f81,
  'job/umbrella-does.json': f82,
  'job/umbrella-fallback.json': f83,
  'job/wash-aluminium.json': f84,
  'job/wash-iron.json': f85,
  'oil-pump/kind-differs.json': f86,
  'oil-pump/looked-over.json': f87,
  'oil-pump/properties.json': f88,
  'oil-pump/spoiled.json': f89,
  'phrases.json': f90,
  'retainer/cracked.json': f91,
  'retainer/keepers-sink-deep.json': f92,
  'retainer/keepers-sound.json': f93,
  'retainer/keepers-stand-uneven.json': f94,
  'retainer/keepers-worn.json': f95,
  'retainer/limits.json': f96,
  'retainer/looks-sound.json': f97,
  'retainer/multi-groove-gap.json': f98,
  'retainer/properties.json': f99,
  'retainer/single-groove-touch.json': f100,
  'retainer/worn-out.json': f101,
  'rocker-stud/bent-stud.json': f102,
  'rocker-stud/gauge-fails.json': f103,
  'rocker-stud/groove-condemns.json': f104,
  'rocker-stud/groove-measured.json': f105,
  'rocker-stud/limits.json': f106,
  'rocker-stud/new-nut-slips.json': f107,
  'rocker-stud/nut-drag-low.json': f108,
  'rocker-stud/nut-holds.json': f109,
  'rocker-stud/nut-runs-free.json': f110,
  'rocker-stud/polish-looks-further.json': f111,
  'rocker-stud/pressed-stud-loose.json': f112,
  'rocker-stud/pressed-stud-proud.json': f113,
  'rocker-stud/pressed-stud-watch.json': f114,
  'rocker-stud/properties.json': f115,
  'rocker-stud/screw-in-stud-loose.json': f116,
  'rocker-stud/shoulder-smooth.json': f117,
  'rocker-stud/stays-put.json': f118,
  'rocker-stud/straight.json': f119,
  'rocker-stud/thread-beyond-chasing.json': f120,
  'rocker-stud/thread-chase.json': f121,
  'rocker-stud/thread-crest-lost.json': f122,
  'rocker-stud/thread-gauged.json': f123,
  'rocker-stud/thread-pitch-off.json': f124,
  'rocker-stud/thread-sound.json': f125,
  'rocker-stud/thread-turns-lost.json': f126,
  'rocker/goes-with-grooved-stud.json': f127,
  'rocker/goes-with-measured-groove.json': f128,
  'rocker/limits.json': f129,
  'rocker/out-of-true.json': f130,
  'rocker/pad-marked-stamped.json': f131,
  'rocker/pad-regrind.json': f132,
  'rocker/pad-smooth.json': f133,
  'rocker/pad-worn-out.json': f134,
  'rocker/pivot-damaged.json': f135,
  'rocker/pivot-one-sided.json': f136,
  'rocker/pivot-smooth.json': f137,
  'rocker/properties.json': f138,
  'rocker/slot-clearance.json': f139,
  'rocker/slot-rubbed-end.json': f140,
  'rocker/slot-rubbed-side.json': f141,
  'rocker/slot-tight.json': f142,
  'rocker/slot-unmarked.json': f143,
  'rocker/track-off-centre.json': f144,
  'rocker/track-offset-measured.json': f145,
  'rocker/track-wide.json': f146,
  'rocker/true-running.json': f147,
  'sources/army-tm-1-1500-204-23-1.json': f148,
  'sources/army-tm-1-1500-204-23-6.json': f149,
  'sources/army-tm-1-1500-204-23-9.json': f150,
  'sources/army-tm-10-3510-209-24.json': f151,
  'sources/army-tm-10-3930-621-34.json': f152,
  'sources/army-tm-10-3930-659-34.json': f153,
  'sources/army-tm-10-3930-671-24.json': f154,
  'sources/army-tm-5-1940-322-24.json': f155,
  'sources/army-tm-5-3805-262-34.json': f156,
  'sources/army-tm-5-3805-298-23-2.json': f157,
  'sources/army-tm-5-3810-306-34.json': f158,
  'sources/army-tm-5-3820-256-24-5.json': f159,
  'sources/army-tm-9-2320-260-34-1.json': f160,
  'sources/army-tm-9-2320-366-34-4.json': f161,
  'sources/army-tm-9-4310-397-14.json': f162,
  'sources/army-tm-9-6115-604-34.json': f163,
  'sources/army-tm-9-8000.json': f164,
  'sources/clean-air-act.json': f165,
  'sources/memory.json': f166,
  'sources/navy-engineman-2-broken-valves.json': f167,
  'sources/navy-navedtra-14076.json': f168,
  'sources/normal-quantiles.json': f169,
  'sources/osha-abrasive-wheels.json': f170,
  'sources/osha-asbestos.json': f171,
  'sources/osha-beryllium.json': f172,
  'sources/osha-lead.json': f173,
  'sources/practice-air-held-valves.json': f174,
  'sources/practice-cam-change.json': f175,
  'sources/practice-camshaft-look.json': f176,
  'sources/practice-charred-seals.json': f177,
  'sources/practice-coil-bind.json': f178,
  'sources/practice-crack-test.json': f179,
  'sources/practice-first-run.json': f180,
  'sources/practice-flat-tappet-change.json': f181,
  'sources/practice-flat-tappet-loads.json': f182,
  'sources/practice-gas-isolation.json': f183,
  'sources/practice-guide-plate.json': f184,
  'sources/practice-guide-tops.json': f185,
  'sources/practice-hot-parts.json': f186,
  'sources/practice-keeper-groove.json': f187,
  'sources/practice-keepers.json': f188,
  'sources/practice-limits-of-advice.json': f189,
  'sources/practice-missed-cracks.json': f190,
  'sources/practice-oil-pump-look.json': f191,
  'sources/practice-order-of-work.json': f192,
  'sources/practice-pump-seals.json': f193,
  'sources/practice-retainer-seal-room.json': f194,
  'sources/practice-rocker-fit.json': f195,
  'sources/practice-rocker-lift.json': f196,
  'sources/practice-seal-kinds.json': f197,
  'sources/practice-seal-set.json': f198,
  'sources/practice-seal-spring-room.json': f199,
  'sources/practice-seal-test.json': f200,
  'sources/practice-sodium-valves.json': f201,
  'sources/practice-special-valves.json': f202,
  'sources/practice-spring-fit.json': f203,
  'sources/practice-spring-height.json': f204,
  'sources/practice-spring-match.json': f205,
  'sources/practice-spring-test.json': f206,
  'sources/practice-springs-at-overhaul.json': f207,
  'sources/practice-stem-surface.json': f208,
  'sources/practice-stem-wear.json': f209,
  'sources/practice-stud-breakage.json': f210,
  'sources/practice-stud-groove.json': f211,
  'sources/practice-stud-in-boss.json': f212,
  'sources/practice-test-pressure.json': f213,
  'sources/practice-thread-chase.json': f214,
  'sources/practice-tip-allowance.json': f215,
  'sources/practice-tip-stand.json': f216,
  'sources/practice-titanium.json': f217,
  'sources/practice-valve-face.json': f218,
  'sources/practice-valve-head.json': f219,
  'sources/practice-valve-margin.json': f220,
  'sources/practice-valve-tip.json': f221,
  'sources/practice-wash-by-material.json': f222,
  'spring/bind-margin-kept.json': f223,
  'spring/binds.json': f224,
  'spring/bright-spots-ask.json': f225,
  'spring/damper-step.json': f226,
  'spring/free-length-kept.json': f227,
  'spring/height-shim.json': f228,
  'spring/height-short.json': f229,
  'spring/inside-smooth.json': f230,
  'spring/limits.json': f231,
  'spring/load-kept.json': f232,
  'spring/odd-one-out.json': f233,
  'spring/out-of-square.json': f234,
  'spring/properties.json': f235,
  'spring/stands-square.json': f236,
  'spring/sunk-too-far.json': f237,
  'spring/surface-fault.json': f238,
  'spring/surface-sound.json': f239,
  'spring/too-short.json': f240,
  'spring/weak.json': f241,
  'stem-seal/been-off.json': f242,
  'stem-seal/charred.json': f243,
  'stem-seal/failed.json': f244,
  'stem-seal/is-o-ring.json': f245,
  'stem-seal/is-positive.json': f246,
  'stem-seal/is-umbrella.json': f247,
  'stem-seal/properties.json': f248,
  'stem-seal/undisturbed.json': f249,
  'stem-seal/word-and-test-differ.json': f250,
  'valve/crack-found.json': f251,
  'valve/face-burned.json': f252,
  'valve/face-not-ground.json': f253,
  'valve/face-one-sided.json': f254,
  'valve/face-refaced.json': f255,
  'valve/face-stock-spent.json': f256,
  'valve/face-through-facing.json': f257,
  'valve/face-true.json': f258,
  'valve/face-trued.json': f259,
  'valve/face-untrue-not-ground.json': f260,
  'valve/filled-valve-hold.json': f261,
  'valve/filled-valve-mark.json': f262,
  'valve/head-cracked.json': f263,
  'valve/head-misshapen.json': f264,
  'valve/head-struck.json': f265,
  'valve/keeper-groove-holds.json': f266,
  'valve/keeper-groove-loose.json': f267,
  'valve/keeper-groove-worn.json': f268,
  'valve/limits.json': f269,
  'valve/looks-sound.json': f270,
  'valve/margin-enough.json': f271,
  'valve/margin-exhaust-thin.json': f272,
  'valve/margin-gone-after-facing.json': f273,
  'valve/margin-thin.json': f274,
  'valve/mushroom-before-drawing.json': f275,
  'valve/nitrided-not-ground.json': f276,
  'valve/properties.json': f277,
  'valve/stem-bent.json': f278,
  'valve/stem-in-size.json': f279,
  'valve/stem-necked.json': f280,
  'valve/stem-nicks-coated.json': f281,
  'valve/stem-nicks.json': f282,
  'valve/stem-plating-worn.json': f283,
  'valve/stem-runout-over.json': f284,
  'valve/stem-scored.json': f285,
  'valve/stem-undersize.json': f286,
  'valve/stem-wear-asks.json': f287,
  'valve/tip-broken.json': f288,
  'valve/tip-mushroomed.json': f289,
  'valve/tip-no-stock.json': f290,
  'valve/tip-not-ground.json': f291,
  'valve/tip-reground.json': f292,
  'valve/tip-soft.json': f293,
  'valve/tip-stands-low.json': f294,
  'valve/tip-stock.json': f295,
  'valve/tip-taken-over.json': f296,
  'valve/titanium-not-ground.json': f297,
}
