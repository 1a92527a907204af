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
import f31 from '../../rules/guide/measured-with-a-scrap-stem.json' with { type: 'json' }
import f32 from '../../rules/guide/not-too-tight.json' with { type: 'json' }
import f33 from '../../rules/guide/out-of-round-replaced.json' with { type: 'json' }
import f34 from '../../rules/guide/out-of-round-restored.json' with { type: 'json' }
import f35 from '../../rules/guide/over-new-fit.json' with { type: 'json' }
import f36 from '../../rules/guide/plug-shows-nothing.json' with { type: 'json' }
import f37 from '../../rules/guide/press-too-heavy.json' with { type: 'json' }
import f38 from '../../rules/guide/press-too-light.json' with { type: 'json' }
import f39 from '../../rules/guide/properties.json' with { type: 'json' }
import f40 from '../../rules/guide/scored-replaced.json' with { type: 'json' }
import f41 from '../../rules/guide/scored-restored.json' with { type: 'json' }
import f42 from '../../rules/guide/selective-fit.json' with { type: 'json' }
import f43 from '../../rules/guide/side-play-asks.json' with { type: 'json' }
import f44 from '../../rules/guide/side-play-light.json' with { type: 'json' }
import f45 from '../../rules/guide/too-short.json' with { type: 'json' }
import f46 from '../../rules/guide/too-tight-nitrided.json' with { type: 'json' }
import f47 from '../../rules/guide/too-tight.json' with { type: 'json' }
import f48 from '../../rules/guide/tool-shows-double.json' with { type: 'json' }
import f49 from '../../rules/guide/tool-shows-light.json' with { type: 'json' }
import f50 from '../../rules/guide/top-too-big.json' with { type: 'json' }
import f51 from '../../rules/guide/top-too-small.json' with { type: 'json' }
import f52 from '../../rules/guide/top-wall-thin.json' with { type: 'json' }
import f53 from '../../rules/guide/worn-replaced.json' with { type: 'json' }
import f54 from '../../rules/guide/worn-restored.json' with { type: 'json' }
import f55 from '../../rules/head/annealed.json' with { type: 'json' }
import f56 from '../../rules/head/bowed-straighten.json' with { type: 'json' }
import f57 from '../../rules/head/chambers-uneven.json' with { type: 'json' }
import f58 from '../../rules/head/corroded-land.json' with { type: 'json' }
import f59 from '../../rules/head/corroded-through.json' with { type: 'json' }
import f60 from '../../rules/head/corrosion-deep.json' with { type: 'json' }
import f61 from '../../rules/head/crack-accepted.json' with { type: 'json' }
import f62 from '../../rules/head/crack-repaired.json' with { type: 'json' }
import f63 from '../../rules/head/cracked-at-seat.json' with { type: 'json' }
import f64 from '../../rules/head/cracked-elsewhere.json' with { type: 'json' }
import f65 from '../../rules/head/deck-damaged.json' with { type: 'json' }
import f66 from '../../rules/head/finish-rough.json' with { type: 'json' }
import f67 from '../../rules/head/finish-smooth.json' with { type: 'json' }
import f68 from '../../rules/head/flat-enough.json' with { type: 'json' }
import f69 from '../../rules/head/hard-enough.json' with { type: 'json' }
import f70 from '../../rules/head/jacket-tight.json' with { type: 'json' }
import f71 from '../../rules/head/land-narrow.json' with { type: 'json' }
import f72 from '../../rules/head/leak-at-plug.json' with { type: 'json' }
import f73 from '../../rules/head/leak-at-stud-hole.json' with { type: 'json' }
import f74 from '../../rules/head/leak-repaired.json' with { type: 'json' }
import f75 from '../../rules/head/leak-through-casting.json' with { type: 'json' }
import f76 from '../../rules/head/leaks-cold.json' with { type: 'json' }
import f77 from '../../rules/head/leaks-hot.json' with { type: 'json' }
import f78 from '../../rules/head/limits.json' with { type: 'json' }
import f79 from '../../rules/head/looks-sound.json' with { type: 'json' }
import f80 from '../../rules/head/magnetic-crack-unplaced.json' with { type: 'json' }
import f81 from '../../rules/head/magnetic-says-nothing.json' with { type: 'json' }
import f82 from '../../rules/head/magnetic-tested.json' with { type: 'json' }
import f83 from '../../rules/head/manifold-face-warped.json' with { type: 'json' }
import f84 from '../../rules/head/no-metal-to-flatten.json' with { type: 'json' }
import f85 from '../../rules/head/over-flat.json' with { type: 'json' }
import f86 from '../../rules/head/passed-cold.json' with { type: 'json' }
import f87 from '../../rules/head/penetrant-crack-unplaced.json' with { type: 'json' }
import f88 from '../../rules/head/penetrant-tested.json' with { type: 'json' }
import f89 from '../../rules/head/plug-thread-spoiled.json' with { type: 'json' }
import f90 from '../../rules/head/properties.json' with { type: 'json' }
import f91 from '../../rules/head/ran-hot.json' with { type: 'json' }
import f92 from '../../rules/head/tested-too-cold.json' with { type: 'json' }
import f93 from '../../rules/head/tested-too-hard.json' with { type: 'json' }
import f94 from '../../rules/head/tested-too-soft.json' with { type: 'json' }
import f95 from '../../rules/head/thick-enough.json' with { type: 'json' }
import f96 from '../../rules/head/too-thin.json' with { type: 'json' }
import f97 from '../../rules/instruments.json' with { type: 'json' }
import f98 from '../../rules/job/adopted-kit.json' with { type: 'json' }
import f99 from '../../rules/job/adopted-seals.json' with { type: 'json' }
import f100 from '../../rules/job/adopted-seats.json' with { type: 'json' }
import f101 from '../../rules/job/adopted-studs.json' with { type: 'json' }
import f102 from '../../rules/job/adopted-valves.json' with { type: 'json' }
import f103 from '../../rules/job/always-new.json' with { type: 'json' }
import f104 from '../../rules/job/bind-roomy.json' with { type: 'json' }
import f105 from '../../rules/job/blast-bead.json' with { type: 'json' }
import f106 from '../../rules/job/blast-grit.json' with { type: 'json' }
import f107 from '../../rules/job/bolt-washers-aluminium.json' with { type: 'json' }
import f108 from '../../rules/job/bolts-bottom.json' with { type: 'json' }
import f109 from '../../rules/job/bolts-may-stay.json' with { type: 'json' }
import f110 from '../../rules/job/bolts-necked.json' with { type: 'json' }
import f111 from '../../rules/job/bolts-torque-to-yield.json' with { type: 'json' }
import f112 from '../../rules/job/brief-head.json' with { type: 'json' }
import f113 from '../../rules/job/brief-springs.json' with { type: 'json' }
import f114 from '../../rules/job/brief-studs.json' with { type: 'json' }
import f115 from '../../rules/job/called-aluminium-pulls.json' with { type: 'json' }
import f116 from '../../rules/job/called-iron-no-pull.json' with { type: 'json' }
import f117 from '../../rules/job/cam-card-known.json' with { type: 'json' }
import f118 from '../../rules/job/cam-change-checks.json' with { type: 'json' }
import f119 from '../../rules/job/cam-kit-lines.json' with { type: 'json' }
import f120 from '../../rules/job/camshaft-replaced.json' with { type: 'json' }
import f121 from '../../rules/job/card-asks-springs.json' with { type: 'json' }
import f122 from '../../rules/job/caustic-on-aluminium.json' with { type: 'json' }
import f123 from '../../rules/job/crack-test-aluminium.json' with { type: 'json' }
import f124 from '../../rules/job/crack-test-iron.json' with { type: 'json' }
import f125 from '../../rules/job/crowns-holed.json' with { type: 'json' }
import f126 from '../../rules/job/crowns-marked.json' with { type: 'json' }
import f127 from '../../rules/job/crowns-unmarked.json' with { type: 'json' }
import f128 from '../../rules/job/deck-cut-clears-exhaust.json' with { type: 'json' }
import f129 from '../../rules/job/deck-cut-clears-intake.json' with { type: 'json' }
import f130 from '../../rules/job/deck-cut-compression.json' with { type: 'json' }
import f131 from '../../rules/job/deck-cut-exhaust-too-close.json' with { type: 'json' }
import f132 from '../../rules/job/deck-cut-intake-too-close.json' with { type: 'json' }
import f133 from '../../rules/job/deck-cut-leaves-head.json' with { type: 'json' }
import f134 from '../../rules/job/deck-cut-orders.json' with { type: 'json' }
import f135 from '../../rules/job/deck-cut-too-deep.json' with { type: 'json' }
import f136 from '../../rules/job/deck-cut-vee.json' with { type: 'json' }
import f137 from '../../rules/job/drain-back-first.json' with { type: 'json' }
import f138 from '../../rules/job/exchange-asked.json' with { type: 'json' }
import f139 from '../../rules/job/exchange-cheaper.json' with { type: 'json' }
import f140 from '../../rules/job/exhaust-burned-why.json' with { type: 'json' }
import f141 from '../../rules/job/exhaust-offered.json' with { type: 'json' }
import f142 from '../../rules/job/exhausts-two-failed.json' with { type: 'json' }
import f143 from '../../rules/job/flat-tappets-kept.json' with { type: 'json' }
import f144 from '../../rules/job/gas-fuel.json' with { type: 'json' }
import f145 from '../../rules/job/guide-cut-too-deep.json' with { type: 'json' }
import f146 from '../../rules/job/guide-top-cut-needed.json' with { type: 'json' }
import f147 from '../../rules/job/guide-top-cut-planned.json' with { type: 'json' }
import f148 from '../../rules/job/guide-top-for-seal.json' with { type: 'json' }
import f149 from '../../rules/job/head-bolt-holes.json' with { type: 'json' }
import f150 from '../../rules/job/inner-springs-bind.json' with { type: 'json' }
import f151 from '../../rules/job/inner-springs-clear-bind.json' with { type: 'json' }
import f152 from '../../rules/job/inner-too-big-for-outer.json' with { type: 'json' }
import f153 from '../../rules/job/jacket-proved.json' with { type: 'json' }
import f154 from '../../rules/job/jacket-test-short.json' with { type: 'json' }
import f155 from '../../rules/job/kit-complete.json' with { type: 'json' }
import f156 from '../../rules/job/lifters-mismatch.json' with { type: 'json' }
import f157 from '../../rules/job/limits.json' with { type: 'json' }
import f158 from '../../rules/job/lobes-why.json' with { type: 'json' }
import f159 from '../../rules/job/metal-known.json' with { type: 'json' }
import f160 from '../../rules/job/new-flat-tappets.json' with { type: 'json' }
import f161 from '../../rules/job/new-on-old.json' with { type: 'json' }
import f162 from '../../rules/job/o-ring-does.json' with { type: 'json' }
import f163 from '../../rules/job/operations.json' with { type: 'json' }
import f164 from '../../rules/job/order-of-work.json' with { type: 'json' }
import f165 from '../../rules/job/piston-near-exhaust.json' with { type: 'json' }
import f166 from '../../rules/job/piston-near-intake.json' with { type: 'json' }
import f167 from '../../rules/job/pistons-clear.json' with { type: 'json' }
import f168 from '../../rules/job/pistons-too-close.json' with { type: 'json' }
import f169 from '../../rules/job/positions-lost.json' with { type: 'json' }
import f170 from '../../rules/job/positive-does.json' with { type: 'json' }
import f171 from '../../rules/job/preload-in-band.json' with { type: 'json' }
import f172 from '../../rules/job/preload-out.json' with { type: 'json' }
import f173 from '../../rules/job/pressure-test-jacket.json' with { type: 'json' }
import f174 from '../../rules/job/properties.json' with { type: 'json' }
import f175 from '../../rules/job/pump-asks-positive.json' with { type: 'json' }
import f176 from '../../rules/job/pump-decides-seals.json' with { type: 'json' }
import f177 from '../../rules/job/ratio-raised.json' with { type: 'json' }
import f178 from '../../rules/job/recommend-kit.json' with { type: 'json' }
import f179 from '../../rules/job/recommend-seals.json' with { type: 'json' }
import f180 from '../../rules/job/recommend-seats.json' with { type: 'json' }
import f181 from '../../rules/job/recommend-studs.json' with { type: 'json' }
import f182 from '../../rules/job/recommend-valves.json' with { type: 'json' }
import f183 from '../../rules/job/recommendation-declined.json' with { type: 'json' }
import f184 from '../../rules/job/repair-cheaper.json' with { type: 'json' }
import f185 from '../../rules/job/retainers-with-springs.json' with { type: 'json' }
import f186 from '../../rules/job/returned-work.json' with { type: 'json' }
import f187 from '../../rules/job/road-emissions.json' with { type: 'json' }
import f188 from '../../rules/job/rockers-changed.json' with { type: 'json' }
import f189 from '../../rules/job/rockers-past-lift.json' with { type: 'json' }
import f190 from '../../rules/job/rockers-within-lift.json' with { type: 'json' }
import f191 from '../../rules/job/roller-lifters.json' with { type: 'json' }
import f192 from '../../rules/job/routine-work.json' with { type: 'json' }
import f193 from '../../rules/job/seal-clearance.json' with { type: 'json' }
import f194 from '../../rules/job/seal-clears-spring.json' with { type: 'json' }
import f195 from '../../rules/job/seal-in-spring.json' with { type: 'json' }
import f196 from '../../rules/job/seal-near-spring.json' with { type: 'json' }
import f197 from '../../rules/job/seal-no-room.json' with { type: 'json' }
import f198 from '../../rules/job/seal-remedies.json' with { type: 'json' }
import f199 from '../../rules/job/seal-room-measured.json' with { type: 'json' }
import f200 from '../../rules/job/seal-room-short.json' with { type: 'json' }
import f201 from '../../rules/job/seals-all-new.json' with { type: 'json' }
import f202 from '../../rules/job/seals-always-new.json' with { type: 'json' }
import f203 from '../../rules/job/seals-head-on.json' with { type: 'json' }
import f204 from '../../rules/job/seals-not-all-new.json' with { type: 'json' }
import f205 from '../../rules/job/seals-suit-pump.json' with { type: 'json' }
import f206 from '../../rules/job/spring-broke-why.json' with { type: 'json' }
import f207 from '../../rules/job/spring-heights-differ.json' with { type: 'json' }
import f208 from '../../rules/job/spring-heights-match.json' with { type: 'json' }
import f209 from '../../rules/job/spring-loads-apart.json' with { type: 'json' }
import f210 from '../../rules/job/spring-loads-match.json' with { type: 'json' }
import f211 from '../../rules/job/spring-loose-in-pocket.json' with { type: 'json' }
import f212 from '../../rules/job/spring-too-big-for-pocket.json' with { type: 'json' }
import f213 from '../../rules/job/springs-at-overhaul.json' with { type: 'json' }
import f214 from '../../rules/job/springs-bind.json' with { type: 'json' }
import f215 from '../../rules/job/springs-clear-bind.json' with { type: 'json' }
import f216 from '../../rules/job/springs-one-broken.json' with { type: 'json' }
import f217 from '../../rules/job/springs-over-least.json' with { type: 'json' }
import f218 from '../../rules/job/springs-past-card-lift.json' with { type: 'json' }
import f219 from '../../rules/job/springs-quarter-failed.json' with { type: 'json' }
import f220 from '../../rules/job/springs-too-strong.json' with { type: 'json' }
import f221 from '../../rules/job/springs-too-weak.json' with { type: 'json' }
import f222 from '../../rules/job/springs-under-most.json' with { type: 'json' }
import f223 from '../../rules/job/springs-with-cam.json' with { type: 'json' }
import f224 from '../../rules/job/springs-within-card-lift.json' with { type: 'json' }
import f225 from '../../rules/job/stock-springs-changed-cam.json' with { type: 'json' }
import f226 from '../../rules/job/stud-upper-advised.json' with { type: 'json' }
import f227 from '../../rules/job/studs-convert-advised.json' with { type: 'json' }
import f228 from '../../rules/job/studs-convert.json' with { type: 'json' }
import f229 from '../../rules/job/studs-grooved-two.json' with { type: 'json' }
import f230 from '../../rules/job/studs-suit.json' with { type: 'json' }
import f231 from '../../rules/job/studs-upper-thread.json' with { type: 'json' }
import f232 from '../../rules/job/subjects.json' with { type: 'json' }
import f233 from '../../rules/job/swabs-dirty.json' with { type: 'json' }
import f234 from '../../rules/job/swabs-white.json' with { type: 'json' }
import f235 from '../../rules/job/tappets-unplaced.json' with { type: 'json' }
import f236 from '../../rules/job/tips-level.json' with { type: 'json' }
import f237 from '../../rules/job/tips-uneven.json' with { type: 'json' }
import f238 from '../../rules/job/umbrella-does.json' with { type: 'json' }
import f239 from '../../rules/job/umbrella-fallback.json' with { type: 'json' }
import f240 from '../../rules/job/vacuum-fails.json' with { type: 'json' }
import f241 from '../../rules/job/vacuum-proved.json' with { type: 'json' }
import f242 from '../../rules/job/valve-cleaning.json' with { type: 'json' }
import f243 from '../../rules/job/valve-dropped.json' with { type: 'json' }
import f244 from '../../rules/job/valve-struck.json' with { type: 'json' }
import f245 from '../../rules/job/wash-aluminium.json' with { type: 'json' }
import f246 from '../../rules/job/wash-iron.json' with { type: 'json' }
import f247 from '../../rules/oil-pump/kind-differs.json' with { type: 'json' }
import f248 from '../../rules/oil-pump/looked-over.json' with { type: 'json' }
import f249 from '../../rules/oil-pump/properties.json' with { type: 'json' }
import f250 from '../../rules/oil-pump/spoiled.json' with { type: 'json' }
import f251 from '../../rules/phrases.json' with { type: 'json' }
import f252 from '../../rules/pushrod/bent-asks-why.json' with { type: 'json' }
import f253 from '../../rules/pushrod/bent.json' with { type: 'json' }
import f254 from '../../rules/pushrod/ends-ask-mates.json' with { type: 'json' }
import f255 from '../../rules/pushrod/ends-worn.json' with { type: 'json' }
import f256 from '../../rules/pushrod/limits.json' with { type: 'json' }
import f257 from '../../rules/pushrod/looks-sound.json' with { type: 'json' }
import f258 from '../../rules/pushrod/properties.json' with { type: 'json' }
import f259 from '../../rules/pushrod/rolls-doubtful.json' with { type: 'json' }
import f260 from '../../rules/pushrod/runout-asks-why.json' with { type: 'json' }
import f261 from '../../rules/pushrod/runs-out.json' with { type: 'json' }
import f262 from '../../rules/pushrod/side-asks-plate.json' with { type: 'json' }
import f263 from '../../rules/pushrod/side-worn.json' with { type: 'json' }
import f264 from '../../rules/pushrod/soft-in-plate.json' with { type: 'json' }
import f265 from '../../rules/pushrod/straight.json' with { type: 'json' }
import f266 from '../../rules/pushrod/suits-its-guide.json' with { type: 'json' }
import f267 from '../../rules/pushrod/was-straightened.json' with { type: 'json' }
import f268 from '../../rules/retainer/cap-misfits.json' with { type: 'json' }
import f269 from '../../rules/retainer/clears-seal.json' with { type: 'json' }
import f270 from '../../rules/retainer/cracked.json' with { type: 'json' }
import f271 from '../../rules/retainer/keepers-sink-deep.json' with { type: 'json' }
import f272 from '../../rules/retainer/keepers-sound.json' with { type: 'json' }
import f273 from '../../rules/retainer/keepers-stand-uneven.json' with { type: 'json' }
import f274 from '../../rules/retainer/keepers-worn.json' with { type: 'json' }
import f275 from '../../rules/retainer/limits.json' with { type: 'json' }
import f276 from '../../rules/retainer/looks-sound.json' with { type: 'json' }
import f277 from '../../rules/retainer/mixed-family.json' with { type: 'json' }
import f278 from '../../rules/retainer/multi-groove-gap.json' with { type: 'json' }
import f279 from '../../rules/retainer/offset-shifts.json' with { type: 'json' }
import f280 from '../../rules/retainer/properties.json' with { type: 'json' }
import f281 from '../../rules/retainer/rotator-stays.json' with { type: 'json' }
import f282 from '../../rules/retainer/rotator-swapped.json' with { type: 'json' }
import f283 from '../../rules/retainer/single-groove-touch.json' with { type: 'json' }
import f284 from '../../rules/retainer/strikes-seal.json' with { type: 'json' }
import f285 from '../../rules/retainer/taper-by-side.json' with { type: 'json' }
import f286 from '../../rules/retainer/worn-out.json' with { type: 'json' }
import f287 from '../../rules/rocker-stud/bent-stud.json' with { type: 'json' }
import f288 from '../../rules/rocker-stud/drag-proved.json' with { type: 'json' }
import f289 from '../../rules/rocker-stud/gauge-fails.json' with { type: 'json' }
import f290 from '../../rules/rocker-stud/groove-asks-pushrod.json' with { type: 'json' }
import f291 from '../../rules/rocker-stud/groove-condemns.json' with { type: 'json' }
import f292 from '../../rules/rocker-stud/groove-measured.json' with { type: 'json' }
import f293 from '../../rules/rocker-stud/hole-gauge-fails.json' with { type: 'json' }
import f294 from '../../rules/rocker-stud/hole-listed.json' with { type: 'json' }
import f295 from '../../rules/rocker-stud/hole-open.json' with { type: 'json' }
import f296 from '../../rules/rocker-stud/limits.json' with { type: 'json' }
import f297 from '../../rules/rocker-stud/new-nut-slips.json' with { type: 'json' }
import f298 from '../../rules/rocker-stud/nut-drag-low.json' with { type: 'json' }
import f299 from '../../rules/rocker-stud/nut-holds.json' with { type: 'json' }
import f300 from '../../rules/rocker-stud/nut-runs-free.json' with { type: 'json' }
import f301 from '../../rules/rocker-stud/polish-looks-further.json' with { type: 'json' }
import f302 from '../../rules/rocker-stud/pressed-stud-loose.json' with { type: 'json' }
import f303 from '../../rules/rocker-stud/pressed-stud-proud.json' with { type: 'json' }
import f304 from '../../rules/rocker-stud/pressed-stud-watch.json' with { type: 'json' }
import f305 from '../../rules/rocker-stud/properties.json' with { type: 'json' }
import f306 from '../../rules/rocker-stud/screw-in-stud-loose.json' with { type: 'json' }
import f307 from '../../rules/rocker-stud/shoulder-smooth.json' with { type: 'json' }
import f308 from '../../rules/rocker-stud/stays-put.json' with { type: 'json' }
import f309 from '../../rules/rocker-stud/straight.json' with { type: 'json' }
import f310 from '../../rules/rocker-stud/thread-beyond-chasing.json' with { type: 'json' }
import f311 from '../../rules/rocker-stud/thread-chase.json' with { type: 'json' }
import f312 from '../../rules/rocker-stud/thread-crest-lost.json' with { type: 'json' }
import f313 from '../../rules/rocker-stud/thread-gauged.json' with { type: 'json' }
import f314 from '../../rules/rocker-stud/thread-pitch-off.json' with { type: 'json' }
import f315 from '../../rules/rocker-stud/thread-sound.json' with { type: 'json' }
import f316 from '../../rules/rocker-stud/thread-turns-lost.json' with { type: 'json' }
import f317 from '../../rules/rocker/cup-smooth.json' with { type: 'json' }
import f318 from '../../rules/rocker/cup-worn.json' with { type: 'json' }
import f319 from '../../rules/rocker/goes-with-grooved-stud.json' with { type: 'json' }
import f320 from '../../rules/rocker/goes-with-measured-groove.json' with { type: 'json' }
import f321 from '../../rules/rocker/limits.json' with { type: 'json' }
import f322 from '../../rules/rocker/out-of-true.json' with { type: 'json' }
import f323 from '../../rules/rocker/pad-marked-stamped.json' with { type: 'json' }
import f324 from '../../rules/rocker/pad-regrind.json' with { type: 'json' }
import f325 from '../../rules/rocker/pad-smooth.json' with { type: 'json' }
import f326 from '../../rules/rocker/pad-worn-out.json' with { type: 'json' }
import f327 from '../../rules/rocker/pivot-damaged.json' with { type: 'json' }
import f328 from '../../rules/rocker/pivot-one-sided.json' with { type: 'json' }
import f329 from '../../rules/rocker/pivot-smooth.json' with { type: 'json' }
import f330 from '../../rules/rocker/properties.json' with { type: 'json' }
import f331 from '../../rules/rocker/shaft-fits.json' with { type: 'json' }
import f332 from '../../rules/rocker/shaft-loose.json' with { type: 'json' }
import f333 from '../../rules/rocker/shaft-stepped.json' with { type: 'json' }
import f334 from '../../rules/rocker/slot-clearance.json' with { type: 'json' }
import f335 from '../../rules/rocker/slot-rubbed-end.json' with { type: 'json' }
import f336 from '../../rules/rocker/slot-rubbed-side.json' with { type: 'json' }
import f337 from '../../rules/rocker/slot-tight.json' with { type: 'json' }
import f338 from '../../rules/rocker/slot-unmarked.json' with { type: 'json' }
import f339 from '../../rules/rocker/sweep-centred.json' with { type: 'json' }
import f340 from '../../rules/rocker/sweep-off.json' with { type: 'json' }
import f341 from '../../rules/rocker/track-off-centre.json' with { type: 'json' }
import f342 from '../../rules/rocker/track-offset-measured.json' with { type: 'json' }
import f343 from '../../rules/rocker/track-wide.json' with { type: 'json' }
import f344 from '../../rules/rocker/true-running.json' with { type: 'json' }
import f345 from '../../rules/seat/angle-off.json' with { type: 'json' }
import f346 from '../../rules/seat/angles-told.json' with { type: 'json' }
import f347 from '../../rules/seat/bare-inner-short.json' with { type: 'json' }
import f348 from '../../rules/seat/bare-outer-short.json' with { type: 'json' }
import f349 from '../../rules/seat/burned-recut.json' with { type: 'json' }
import f350 from '../../rules/seat/centre-high.json' with { type: 'json' }
import f351 from '../../rules/seat/centre-low.json' with { type: 'json' }
import f352 from '../../rules/seat/copper-dust.json' with { type: 'json' }
import f353 from '../../rules/seat/cracked.json' with { type: 'json' }
import f354 from '../../rules/seat/cut-as-planned.json' with { type: 'json' }
import f355 from '../../rules/seat/cut-hard-skin-tested.json' with { type: 'json' }
import f356 from '../../rules/seat/depth-known.json' with { type: 'json' }
import f357 from '../../rules/seat/dull-insert-noted.json' with { type: 'json' }
import f358 from '../../rules/seat/face-not-bare.json' with { type: 'json' }
import f359 from '../../rules/seat/face-not-true.json' with { type: 'json' }
import f360 from '../../rules/seat/film-on-seat-shows-face.json' with { type: 'json' }
import f361 from '../../rules/seat/gas-inserts-matched.json' with { type: 'json' }
import f362 from '../../rules/seat/guide-renewed.json' with { type: 'json' }
import f363 from '../../rules/seat/hard-skin-cut.json' with { type: 'json' }
import f364 from '../../rules/seat/head-takes-no-insert.json' with { type: 'json' }
import f365 from '../../rules/seat/insert-burned.json' with { type: 'json' }
import f366 from '../../rules/seat/insert-loose.json' with { type: 'json' }
import f367 from '../../rules/seat/insert-set-back.json' with { type: 'json' }
import f368 from '../../rules/seat/insert-too-loose.json' with { type: 'json' }
import f369 from '../../rules/seat/insert-too-tight.json' with { type: 'json' }
import f370 from '../../rules/seat/interference-on-gas.json' with { type: 'json' }
import f371 from '../../rules/seat/lash-closed.json' with { type: 'json' }
import f372 from '../../rules/seat/limits.json' with { type: 'json' }
import f373 from '../../rules/seat/looks-sound.json' with { type: 'json' }
import f374 from '../../rules/seat/new-insert.json' with { type: 'json' }
import f375 from '../../rules/seat/no-metal-left.json' with { type: 'json' }
import f376 from '../../rules/seat/not-all-round.json' with { type: 'json' }
import f377 from '../../rules/seat/pocketed.json' with { type: 'json' }
import f378 from '../../rules/seat/pour-test-weeps.json' with { type: 'json' }
import f379 from '../../rules/seat/properties.json' with { type: 'json' }
import f380 from '../../rules/seat/recut.json' with { type: 'json' }
import f381 from '../../rules/seat/ring-high.json' with { type: 'json' }
import f382 from '../../rules/seat/ring-looked-at.json' with { type: 'json' }
import f383 from '../../rules/seat/ring-low.json' with { type: 'json' }
import f384 from '../../rules/seat/ring-narrow-high.json' with { type: 'json' }
import f385 from '../../rules/seat/ring-narrow-low.json' with { type: 'json' }
import f386 from '../../rules/seat/ring-narrow.json' with { type: 'json' }
import f387 from '../../rules/seat/ring-wide.json' with { type: 'json' }
import f388 from '../../rules/seat/roundness-shown.json' with { type: 'json' }
import f389 from '../../rules/seat/runout-cause.json' with { type: 'json' }
import f390 from '../../rules/seat/runs-out.json' with { type: 'json' }
import f391 from '../../rules/seat/sinks-by-work.json' with { type: 'json' }
import f392 from '../../rules/seat/soft-and-sunk.json' with { type: 'json' }
import f393 from '../../rules/seat/soft-lash-closing.json' with { type: 'json' }
import f394 from '../../rules/seat/soft-on-gas.json' with { type: 'json' }
import f395 from '../../rules/seat/soft-on-petrol.json' with { type: 'json' }
import f396 from '../../rules/seat/soft-seat-watched.json' with { type: 'json' }
import f397 from '../../rules/seat/spun-shows-place.json' with { type: 'json' }
import f398 from '../../rules/seat/stock-spent.json' with { type: 'json' }
import f399 from '../../rules/seat/sunk-try-new-valve.json' with { type: 'json' }
import f400 from '../../rules/seat/sunk-with-new-valve.json' with { type: 'json' }
import f401 from '../../rules/seat/thirty-degree-seat.json' with { type: 'json' }
import f402 from '../../rules/seat/throat-cutter-too-flat.json' with { type: 'json' }
import f403 from '../../rules/seat/top-cutter-too-steep.json' with { type: 'json' }
import f404 from '../../rules/seat/vacuum-below-mates.json' with { type: 'json' }
import f405 from '../../rules/seat/vacuum-falls.json' with { type: 'json' }
import f406 from '../../rules/seat/vacuum-guide-open.json' with { type: 'json' }
import f407 from '../../rules/seat/vacuum-low.json' with { type: 'json' }
import f408 from '../../rules/sources/army-od1001.json' with { type: 'json' }
import f409 from '../../rules/sources/army-tm-1-1500-204-23-1.json' with { type: 'json' }
import f410 from '../../rules/sources/army-tm-1-1500-204-23-6.json' with { type: 'json' }
import f411 from '../../rules/sources/army-tm-1-1500-204-23-9.json' with { type: 'json' }
import f412 from '../../rules/sources/army-tm-10-3510-209-24.json' with { type: 'json' }
import f413 from '../../rules/sources/army-tm-10-3930-621-34.json' with { type: 'json' }
import f414 from '../../rules/sources/army-tm-10-3930-653-14.json' with { type: 'json' }
import f415 from '../../rules/sources/army-tm-10-3930-659-34.json' with { type: 'json' }
import f416 from '../../rules/sources/army-tm-10-3930-671-24.json' with { type: 'json' }
import f417 from '../../rules/sources/army-tm-5-1940-322-24.json' with { type: 'json' }
import f418 from '../../rules/sources/army-tm-5-3805-255-14.json' with { type: 'json' }
import f419 from '../../rules/sources/army-tm-5-3805-262-34.json' with { type: 'json' }
import f420 from '../../rules/sources/army-tm-5-3805-298-23-2.json' with { type: 'json' }
import f421 from '../../rules/sources/army-tm-5-3810-289-34-water-holes.json' with { type: 'json' }
import f422 from '../../rules/sources/army-tm-5-3810-289-34.json' with { type: 'json' }
import f423 from '../../rules/sources/army-tm-5-3810-295-34.json' with { type: 'json' }
import f424 from '../../rules/sources/army-tm-5-3810-306-34-head.json' with { type: 'json' }
import f425 from '../../rules/sources/army-tm-5-3810-306-34.json' with { type: 'json' }
import f426 from '../../rules/sources/army-tm-5-3820-256-24-5.json' with { type: 'json' }
import f427 from '../../rules/sources/army-tm-5-3825-230-14.json' with { type: 'json' }
import f428 from '../../rules/sources/army-tm-5-4320-240-15.json' with { type: 'json' }
import f429 from '../../rules/sources/army-tm-5-4320-300-14.json' with { type: 'json' }
import f430 from '../../rules/sources/army-tm-5-6115-400-35.json' with { type: 'json' }
import f431 from '../../rules/sources/army-tm-5-6115-593-34.json' with { type: 'json' }
import f432 from '../../rules/sources/army-tm-55-1905-223-24-5.json' with { type: 'json' }
import f433 from '../../rules/sources/army-tm-9-2320-260-34-1.json' with { type: 'json' }
import f434 from '../../rules/sources/army-tm-9-2320-366-34-4.json' with { type: 'json' }
import f435 from '../../rules/sources/army-tm-9-2815-254-24.json' with { type: 'json' }
import f436 from '../../rules/sources/army-tm-9-2815-255-24.json' with { type: 'json' }
import f437 from '../../rules/sources/army-tm-9-4310-397-14.json' with { type: 'json' }
import f438 from '../../rules/sources/army-tm-9-4940-549-14.json' with { type: 'json' }
import f439 from '../../rules/sources/army-tm-9-6115-604-34.json' with { type: 'json' }
import f440 from '../../rules/sources/army-tm-9-8000.json' with { type: 'json' }
import f441 from '../../rules/sources/astm-e1417.json' with { type: 'json' }
import f442 from '../../rules/sources/astm-e1444.json' with { type: 'json' }
import f443 from '../../rules/sources/clean-air-act.json' with { type: 'json' }
import f444 from '../../rules/sources/memory.json' with { type: 'json' }
import f445 from '../../rules/sources/navy-14076-lash-caps.json' with { type: 'json' }
import f446 from '../../rules/sources/navy-14329.json' with { type: 'json' }
import f447 from '../../rules/sources/navy-engineman-2-broken-valves.json' with { type: 'json' }
import f448 from '../../rules/sources/navy-engineman-2-pressure-tests.json' with { type: 'json' }
import f449 from '../../rules/sources/navy-navedtra-14076.json' with { type: 'json' }
import f450 from '../../rules/sources/normal-quantiles.json' with { type: 'json' }
import f451 from '../../rules/sources/osha-abrasive-wheels.json' with { type: 'json' }
import f452 from '../../rules/sources/osha-asbestos.json' with { type: 'json' }
import f453 from '../../rules/sources/osha-beryllium.json' with { type: 'json' }
import f454 from '../../rules/sources/osha-hydroxide.json' with { type: 'json' }
import f455 from '../../rules/sources/osha-lead.json' with { type: 'json' }
import f456 from '../../rules/sources/practice-air-held-valves.json' with { type: 'json' }
import f457 from '../../rules/sources/practice-always-new.json' with { type: 'json' }
import f458 from '../../rules/sources/practice-annealed-heads.json' with { type: 'json' }
import f459 from '../../rules/sources/practice-blasting.json' with { type: 'json' }
import f460 from '../../rules/sources/practice-cam-change.json' with { type: 'json' }
import f461 from '../../rules/sources/practice-camshaft-look.json' with { type: 'json' }
import f462 from '../../rules/sources/practice-chamber-volumes.json' with { type: 'json' }
import f463 from '../../rules/sources/practice-charred-seals.json' with { type: 'json' }
import f464 from '../../rules/sources/practice-coil-bind.json' with { type: 'json' }
import f465 from '../../rules/sources/practice-cold-pressure-test.json' with { type: 'json' }
import f466 from '../../rules/sources/practice-core-plugs.json' with { type: 'json' }
import f467 from '../../rules/sources/practice-corroded-ports.json' with { type: 'json' }
import f468 from '../../rules/sources/practice-crack-repair.json' with { type: 'json' }
import f469 from '../../rules/sources/practice-crack-sites.json' with { type: 'json' }
import f470 from '../../rules/sources/practice-crack-test.json' with { type: 'json' }
import f471 from '../../rules/sources/practice-deck-finish.json' with { type: 'json' }
import f472 from '../../rules/sources/practice-deck-flatness.json' with { type: 'json' }
import f473 from '../../rules/sources/practice-exhaust-sets.json' with { type: 'json' }
import f474 from '../../rules/sources/practice-first-run.json' with { type: 'json' }
import f475 from '../../rules/sources/practice-flat-tappet-change.json' with { type: 'json' }
import f476 from '../../rules/sources/practice-flat-tappet-loads.json' with { type: 'json' }
import f477 from '../../rules/sources/practice-gas-isolation.json' with { type: 'json' }
import f478 from '../../rules/sources/practice-gas-seats.json' with { type: 'json' }
import f479 from '../../rules/sources/practice-guide-clearance.json' with { type: 'json' }
import f480 from '../../rules/sources/practice-guide-fit.json' with { type: 'json' }
import f481 from '../../rules/sources/practice-guide-measuring.json' with { type: 'json' }
import f482 from '../../rules/sources/practice-guide-plate.json' with { type: 'json' }
import f483 from '../../rules/sources/practice-guide-repair.json' with { type: 'json' }
import f484 from '../../rules/sources/practice-guide-tops.json' with { type: 'json' }
import f485 from '../../rules/sources/practice-head-bolt-stretch.json' with { type: 'json' }
import f486 from '../../rules/sources/practice-head-bolts.json' with { type: 'json' }
import f487 from '../../rules/sources/practice-head-thickness.json' with { type: 'json' }
import f488 from '../../rules/sources/practice-hot-parts.json' with { type: 'json' }
import f489 from '../../rules/sources/practice-intake-face.json' with { type: 'json' }
import f490 from '../../rules/sources/practice-keeper-families.json' with { type: 'json' }
import f491 from '../../rules/sources/practice-keeper-groove.json' with { type: 'json' }
import f492 from '../../rules/sources/practice-keepers.json' with { type: 'json' }
import f493 from '../../rules/sources/practice-leak-tests.json' with { type: 'json' }
import f494 from '../../rules/sources/practice-lifter-mix.json' with { type: 'json' }
import f495 from '../../rules/sources/practice-lifter-preload.json' with { type: 'json' }
import f496 from '../../rules/sources/practice-limits-of-advice.json' with { type: 'json' }
import f497 from '../../rules/sources/practice-missed-cracks.json' with { type: 'json' }
import f498 from '../../rules/sources/practice-offset-keepers.json' with { type: 'json' }
import f499 from '../../rules/sources/practice-oil-pump-look.json' with { type: 'json' }
import f500 from '../../rules/sources/practice-order-of-work.json' with { type: 'json' }
import f501 from '../../rules/sources/practice-pairs.json' with { type: 'json' }
import f502 from '../../rules/sources/practice-performance-rebuild.json' with { type: 'json' }
import f503 from '../../rules/sources/practice-plug-threads.json' with { type: 'json' }
import f504 from '../../rules/sources/practice-positions.json' with { type: 'json' }
import f505 from '../../rules/sources/practice-pump-seals.json' with { type: 'json' }
import f506 from '../../rules/sources/practice-pushrods.json' with { type: 'json' }
import f507 from '../../rules/sources/practice-repair-or-exchange.json' with { type: 'json' }
import f508 from '../../rules/sources/practice-retainer-seal-room.json' with { type: 'json' }
import f509 from '../../rules/sources/practice-return-checks.json' with { type: 'json' }
import f510 from '../../rules/sources/practice-rocker-fit.json' with { type: 'json' }
import f511 from '../../rules/sources/practice-rocker-lift.json' with { type: 'json' }
import f512 from '../../rules/sources/practice-rotators.json' with { type: 'json' }
import f513 from '../../rules/sources/practice-seal-kinds.json' with { type: 'json' }
import f514 from '../../rules/sources/practice-seal-set.json' with { type: 'json' }
import f515 from '../../rules/sources/practice-seal-spring-room.json' with { type: 'json' }
import f516 from '../../rules/sources/practice-seal-test.json' with { type: 'json' }
import f517 from '../../rules/sources/practice-seat-contact.json' with { type: 'json' }
import f518 from '../../rules/sources/practice-seat-cutters.json' with { type: 'json' }
import f519 from '../../rules/sources/practice-seat-inserts.json' with { type: 'json' }
import f520 from '../../rules/sources/practice-seat-sink.json' with { type: 'json' }
import f521 from '../../rules/sources/practice-seat-width.json' with { type: 'json' }
import f522 from '../../rules/sources/practice-side-play.json' with { type: 'json' }
import f523 from '../../rules/sources/practice-sodium-valves.json' with { type: 'json' }
import f524 from '../../rules/sources/practice-soft-seats.json' with { type: 'json' }
import f525 from '../../rules/sources/practice-special-valves.json' with { type: 'json' }
import f526 from '../../rules/sources/practice-spring-fit.json' with { type: 'json' }
import f527 from '../../rules/sources/practice-spring-height.json' with { type: 'json' }
import f528 from '../../rules/sources/practice-spring-match.json' with { type: 'json' }
import f529 from '../../rules/sources/practice-spring-sets.json' with { type: 'json' }
import f530 from '../../rules/sources/practice-spring-test.json' with { type: 'json' }
import f531 from '../../rules/sources/practice-springs-at-overhaul.json' with { type: 'json' }
import f532 from '../../rules/sources/practice-stem-surface.json' with { type: 'json' }
import f533 from '../../rules/sources/practice-stem-wear.json' with { type: 'json' }
import f534 from '../../rules/sources/practice-straighten-first.json' with { type: 'json' }
import f535 from '../../rules/sources/practice-struck-valves.json' with { type: 'json' }
import f536 from '../../rules/sources/practice-stud-breakage.json' with { type: 'json' }
import f537 from '../../rules/sources/practice-stud-groove.json' with { type: 'json' }
import f538 from '../../rules/sources/practice-stud-holes.json' with { type: 'json' }
import f539 from '../../rules/sources/practice-stud-in-boss.json' with { type: 'json' }
import f540 from '../../rules/sources/practice-test-pressure.json' with { type: 'json' }
import f541 from '../../rules/sources/practice-thread-chase.json' with { type: 'json' }
import f542 from '../../rules/sources/practice-tip-allowance.json' with { type: 'json' }
import f543 from '../../rules/sources/practice-tip-stand.json' with { type: 'json' }
import f544 from '../../rules/sources/practice-titanium.json' with { type: 'json' }
import f545 from '../../rules/sources/practice-valve-cleaning.json' with { type: 'json' }
import f546 from '../../rules/sources/practice-valve-face.json' with { type: 'json' }
import f547 from '../../rules/sources/practice-valve-head.json' with { type: 'json' }
import f548 from '../../rules/sources/practice-valve-margin.json' with { type: 'json' }
import f549 from '../../rules/sources/practice-valve-tip.json' with { type: 'json' }
import f550 from '../../rules/sources/practice-wash-by-material.json' with { type: 'json' }
import f551 from '../../rules/sources/practice-work-order.json' with { type: 'json' }
import f552 from '../../rules/sources/sae-710356.json' with { type: 'json' }
import f553 from '../../rules/sources/sae-871622.json' with { type: 'json' }
import f554 from '../../rules/sources/sae-932780.json' with { type: 'json' }
import f555 from '../../rules/sources/wang-1998-valve-seats.json' with { type: 'json' }
import f556 from '../../rules/spring/bind-margin-kept.json' with { type: 'json' }
import f557 from '../../rules/spring/binds.json' with { type: 'json' }
import f558 from '../../rules/spring/bright-spots-ask.json' with { type: 'json' }
import f559 from '../../rules/spring/broken.json' with { type: 'json' }
import f560 from '../../rules/spring/damper-step.json' with { type: 'json' }
import f561 from '../../rules/spring/free-length-kept.json' with { type: 'json' }
import f562 from '../../rules/spring/height-in-band.json' with { type: 'json' }
import f563 from '../../rules/spring/height-shim.json' with { type: 'json' }
import f564 from '../../rules/spring/height-short.json' with { type: 'json' }
import f565 from '../../rules/spring/inside-smooth.json' with { type: 'json' }
import f566 from '../../rules/spring/limits.json' with { type: 'json' }
import f567 from '../../rules/spring/load-kept.json' with { type: 'json' }
import f568 from '../../rules/spring/odd-one-out.json' with { type: 'json' }
import f569 from '../../rules/spring/out-of-square.json' with { type: 'json' }
import f570 from '../../rules/spring/properties.json' with { type: 'json' }
import f571 from '../../rules/spring/stands-square.json' with { type: 'json' }
import f572 from '../../rules/spring/sunk-too-far.json' with { type: 'json' }
import f573 from '../../rules/spring/surface-fault.json' with { type: 'json' }
import f574 from '../../rules/spring/surface-sound.json' with { type: 'json' }
import f575 from '../../rules/spring/too-short.json' with { type: 'json' }
import f576 from '../../rules/spring/weak.json' with { type: 'json' }
import f577 from '../../rules/stem-seal/been-off.json' with { type: 'json' }
import f578 from '../../rules/stem-seal/charred.json' with { type: 'json' }
import f579 from '../../rules/stem-seal/failed.json' with { type: 'json' }
import f580 from '../../rules/stem-seal/is-o-ring.json' with { type: 'json' }
import f581 from '../../rules/stem-seal/is-positive.json' with { type: 'json' }
import f582 from '../../rules/stem-seal/is-umbrella.json' with { type: 'json' }
import f583 from '../../rules/stem-seal/properties.json' with { type: 'json' }
import f584 from '../../rules/stem-seal/undisturbed.json' with { type: 'json' }
import f585 from '../../rules/stem-seal/word-and-test-differ.json' with { type: 'json' }
import f586 from '../../rules/valve/clean-by-hand.json' with { type: 'json' }
import f587 from '../../rules/valve/crack-found.json' with { type: 'json' }
import f588 from '../../rules/valve/face-burned.json' with { type: 'json' }
import f589 from '../../rules/valve/face-not-ground.json' with { type: 'json' }
import f590 from '../../rules/valve/face-one-sided.json' with { type: 'json' }
import f591 from '../../rules/valve/face-refaced.json' with { type: 'json' }
import f592 from '../../rules/valve/face-stock-spent.json' with { type: 'json' }
import f593 from '../../rules/valve/face-through-facing.json' with { type: 'json' }
import f594 from '../../rules/valve/face-true.json' with { type: 'json' }
import f595 from '../../rules/valve/face-trued.json' with { type: 'json' }
import f596 from '../../rules/valve/face-untrue-not-ground.json' with { type: 'json' }
import f597 from '../../rules/valve/filled-valve-hold.json' with { type: 'json' }
import f598 from '../../rules/valve/filled-valve-mark.json' with { type: 'json' }
import f599 from '../../rules/valve/head-broken-off.json' with { type: 'json' }
import f600 from '../../rules/valve/head-cracked.json' with { type: 'json' }
import f601 from '../../rules/valve/head-misshapen.json' with { type: 'json' }
import f602 from '../../rules/valve/head-struck.json' with { type: 'json' }
import f603 from '../../rules/valve/keeper-groove-holds.json' with { type: 'json' }
import f604 from '../../rules/valve/keeper-groove-loose.json' with { type: 'json' }
import f605 from '../../rules/valve/keeper-groove-worn.json' with { type: 'json' }
import f606 from '../../rules/valve/limits.json' with { type: 'json' }
import f607 from '../../rules/valve/looks-sound.json' with { type: 'json' }
import f608 from '../../rules/valve/margin-enough.json' with { type: 'json' }
import f609 from '../../rules/valve/margin-exhaust-thin.json' with { type: 'json' }
import f610 from '../../rules/valve/margin-gone-after-facing.json' with { type: 'json' }
import f611 from '../../rules/valve/margin-thin.json' with { type: 'json' }
import f612 from '../../rules/valve/mushroom-before-drawing.json' with { type: 'json' }
import f613 from '../../rules/valve/nitrided-not-ground.json' with { type: 'json' }
import f614 from '../../rules/valve/properties.json' with { type: 'json' }
import f615 from '../../rules/valve/stem-bent.json' with { type: 'json' }
import f616 from '../../rules/valve/stem-in-size.json' with { type: 'json' }
import f617 from '../../rules/valve/stem-necked.json' with { type: 'json' }
import f618 from '../../rules/valve/stem-nicks-coated.json' with { type: 'json' }
import f619 from '../../rules/valve/stem-nicks.json' with { type: 'json' }
import f620 from '../../rules/valve/stem-plating-worn.json' with { type: 'json' }
import f621 from '../../rules/valve/stem-runout-kept.json' with { type: 'json' }
import f622 from '../../rules/valve/stem-runout-over.json' with { type: 'json' }
import f623 from '../../rules/valve/stem-scored.json' with { type: 'json' }
import f624 from '../../rules/valve/stem-undersize.json' with { type: 'json' }
import f625 from '../../rules/valve/stem-wear-asks.json' with { type: 'json' }
import f626 from '../../rules/valve/tip-broken.json' with { type: 'json' }
import f627 from '../../rules/valve/tip-mushroomed.json' with { type: 'json' }
import f628 from '../../rules/valve/tip-no-stock.json' with { type: 'json' }
import f629 from '../../rules/valve/tip-not-ground.json' with { type: 'json' }
import f630 from '../../rules/valve/tip-reground.json' with { type: 'json' }
import f631 from '../../rules/valve/tip-soft.json' with { type: 'json' }
import f632 from '../../rules/valve/tip-stands-low.json' with { type: 'json' }
import f633 from '../../rules/valve/tip-stock.json' with { type: 'json' }
import f634 from '../../rules/valve/tip-taken-over.json' with { type: 'json' }
import f635 from '../../rules/valve/titanium-not-ground.json' with { type: 'json' }
import f636 from '../../rules/valve/work-told.json' with { type: 'json' }

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
  'guide/measured-with-a-scrap-stem.json': f31,
  'guide/not-too-tight.json': f32,
  'guide/out-of-round-replaced.json': f33,
  'guide/out-of-round-restored.json': f34,
  'guide/over-new-fit.json': f35,
  'guide/plug-shows-nothing.json': f36,
  'guide/press-too-heavy.json': f37,
  'guide/press-too-light.json': f38,
  'guide/properties.json': f39,
  'guide/scored-replaced.json': f40,
  'guide/scored-restored.json': f41,
  'guide/selective-fit.json': f42,
  'guide/side-play-asks.json': f43,
  'guide/side-play-light.json': f44,
  'guide/too-short.json': f45,
  'guide/too-tight-nitrided.json': f46,
  'guide/too-tight.json': f47,
  'guide/tool-shows-double.json': f48,
  'guide/tool-shows-light.json': f49,
  'guide/top-too-big.json': f50,
  'guide/top-too-small.json': f51,
  'guide/top-wall-thin.json': f52,
  'guide/worn-replaced.json': f53,
  'guide/worn-restored.json': f54,
  'head/annealed.json': f55,
  'head/bowed-straighten.json': f56,
  'head/chambers-uneven.json': f57,
  'head/corroded-land.json': f58,
  'head/corroded-through.json': f59,
  'head/corrosion-deep.json': f60,
  'head/crack-accepted.json': f61,
  'head/crack-repaired.json': f62,
  'head/cracked-at-seat.json': f63,
  'head/cracked-elsewhere.json': f64,
  'head/deck-damaged.json': f65,
  'head/finish-rough.json': f66,
  'head/finish-smooth.json': f67,
  'head/flat-enough.json': f68,
  'head/hard-enough.json': f69,
  'head/jacket-tight.json': f70,
  'head/land-narrow.json': f71,
  'head/leak-at-plug.json': f72,
  'head/leak-at-stud-hole.json': f73,
  'head/leak-repaired.json': f74,
  'head/leak-through-casting.json': f75,
  'head/leaks-cold.json': f76,
  'head/leaks-hot.json': f77,
  'head/limits.json': f78,
  'head/looks-sound.json': f79,
  'head/magnetic-crack-unplaced.json': f80,
  'head/magnetic-says-nothing.json': f81,
  'head/magnetic-tested.json': f82,
  'head/manifold-face-warped.json': f83,
  'head/no-metal-to-flatten.json': f84,
  'head/over-flat.json': f85,
  'head/passed-cold.json': f86,
  'head/penetrant-crack-unplaced.json': f87,
  'head/penetrant-tested.json': f88,
  'head/plug-thread-spoiled.json': f89,
  'head/properties.json': f90,
  'head/ran-hot.json': f91,
  'head/tested-too-cold.json': f92,
  'head/tested-too-hard.json': f93,
  'head/tested-too-soft.json': f94,
  'head/thick-enough.json': f95,
  'head/too-thin.json': f96,
  'instruments.json': f97,
  'job/adopted-kit.json': f98,
  'job/adopted-seals.json': f99,
  'job/adopted-seats.json': f100,
  'job/adopted-studs.json': f101,
  'job/adopted-valves.json': f102,
  'job/always-new.json': f103,
  'job/bind-roomy.json': f104,
  'job/blast-bead.json': f105,
  'job/blast-grit.json': f106,
  'job/bolt-washers-aluminium.json': f107,
  'job/bolts-bottom.json': f108,
  'job/bolts-may-stay.json': f109,
  'job/bolts-necked.json': f110,
  'job/bolts-torque-to-yield.json': f111,
  'job/brief-head.json': f112,
  'job/brief-springs.json': f113,
  'job/brief-studs.json': f114,
  'job/called-aluminium-pulls.json': f115,
  'job/called-iron-no-pull.json': f116,
  'job/cam-card-known.json': f117,
  'job/cam-change-checks.json': f118,
  'job/cam-kit-lines.json': f119,
  'job/camshaft-replaced.json': f120,
  'job/card-asks-springs.json': f121,
  'job/caustic-on-aluminium.json': f122,
  'job/crack-test-aluminium.json': f123,
  'job/crack-test-iron.json': f124,
  'job/crowns-holed.json': f125,
  'job/crowns-marked.json': f126,
  'job/crowns-unmarked.json': f127,
  'job/deck-cut-clears-exhaust.json': f128,
  'job/deck-cut-clears-intake.json': f129,
  'job/deck-cut-compression.json': f130,
  'job/deck-cut-exhaust-too-close.json': f131,
  'job/deck-cut-intake-too-close.json': f132,
  'job/deck-cut-leaves-head.json': f133,
  'job/deck-cut-orders.json': f134,
  'job/deck-cut-too-deep.json': f135,
  'job/deck-cut-vee.json': f136,
  'job/drain-back-first.json': f137,
  'job/exchange-asked.json': f138,
  'job/exchange-cheaper.json': f139,
  'job/exhaust-burned-why.json': f140,
  'job/exhaust-offered.json': f141,
  'job/exhausts-two-failed.json': f142,
  'job/flat-tappets-kept.json': f143,
  'job/gas-fuel.json': f144,
  'job/guide-cut-too-deep.json': f145,
  'job/guide-top-cut-needed.json': f146,
  'job/guide-top-cut-planned.json': f147,
  'job/guide-top-for-seal.json': f148,
  'job/head-bolt-holes.json': f149,
  'job/inner-springs-bind.json': f150,
  'job/inner-springs-clear-bind.json': f151,
  'job/inner-too-big-for-outer.json': f152,
  'job/jacket-proved.json': f153,
  'job/jacket-test-short.json': f154,
  'job/kit-complete.json': f155,
  'job/lifters-mismatch.json': f156,
  'job/limits.json': f157,
  'job/lobes-why.json': f158,
  'job/metal-known.json': f159,
  'job/new-flat-tappets.json': f160,
  'job/new-on-old.json': f161,
  'job/o-ring-does.json': f162,
  'job/operations.json': f163,
  'job/order-of-work.json': f164,
  'job/piston-near-exhaust.json': f165,
  'job/piston-near-intake.json': f166,
  'job/pistons-clear.json': f167,
  'job/pistons-too-close.json': f168,
  'job/positions-lost.json': f169,
  'job/positive-does.json': f170,
  'job/preload-in-band.json': f171,
  'job/preload-out.json': f172,
  'job/pressure-test-jacket.json': f173,
  'job/properties.json': f174,
  'job/pump-asks-positive.json': f175,
  'job/pump-decides-seals.json': f176,
  'job/ratio-raised.json': f177,
  'job/recommend-kit.json': f178,
  'job/recommend-seals.json': f179,
  'job/recommend-seats.json': f180,
  'job/recommend-studs.json': f181,
  'job/recommend-valves.json': f182,
  'job/recommendation-declined.json': f183,
  'job/repair-cheaper.json': f184,
  'job/retainers-with-springs.json': f185,
  'job/returned-work.json': f186,
  'job/road-emissions.json': f187,
  'job/rockers-changed.json': f188,
  'job/rockers-past-lift.json': f189,
  'job/rockers-within-lift.json': f190,
  'job/roller-lifters.json': f191,
  'job/routine-work.json': f192,
  'job/seal-clearance.json': f193,
  'job/seal-clears-spring.json': f194,
  'job/seal-in-spring.json': f195,
  'job/seal-near-spring.json': f196,
  'job/seal-no-room.json': f197,
  'job/seal-remedies.json': f198,
  'job/seal-room-measured.json': f199,
  'job/seal-room-short.json': f200,
  'job/seals-all-new.json': f201,
  'job/seals-always-new.json': f202,
  'job/seals-head-on.json': f203,
  'job/seals-not-all-new.json': f204,
  'job/seals-suit-pump.json': f205,
  'job/spring-broke-why.json': f206,
  'job/spring-heights-differ.json': f207,
  'job/spring-heights-match.json': f208,
  'job/spring-loads-apart.json': f209,
  'job/spring-loads-match.json': f210,
  'job/spring-loose-in-pocket.json': f211,
  'job/spring-too-big-for-pocket.json': f212,
  'job/springs-at-overhaul.json': f213,
  'job/springs-bind.json': f214,
  'job/springs-clear-bind.json': f215,
  'job/springs-one-broken.json': f216,
  'job/springs-over-least.json': f217,
  'job/springs-past-card-lift.json': f218,
  'job/springs-quarter-failed.json': f219,
  'job/springs-too-strong.json': f220,
  'job/springs-too-weak.json': f221,
  'job/springs-under-most.json': f222,
  'job/springs-with-cam.json': f223,
  'job/springs-within-card-lift.json': f224,
  'job/stock-springs-changed-cam.json': f225,
  'job/stud-upper-advised.json': f226,
  'job/studs-convert-advised.json': f227,
  'job/studs-convert.json': f228,
  'job/studs-grooved-two.json': f229,
  'job/studs-suit.json': f230,
  'job/studs-upper-thread.json': f231,
  'job/subjects.json': f232,
  'job/swabs-dirty.json': f233,
  'job/swabs-white.json': f234,
  'job/tappets-unplaced.json': f235,
  'job/tips-level.json': f236,
  'job/tips-uneven.json': f237,
  'job/umbrella-does.json': f238,
  'job/umbrella-fallback.json': f239,
  'job/vacuum-fails.json': f240,
  'job/vacuum-proved.json': f241,
  'job/valve-cleaning.json': f242,
  'job/valve-dropped.json': f243,
  'job/valve-struck.json': f244,
  'job/wash-aluminium.json': f245,
  'job/wash-iron.json': f246,
  'oil-pump/kind-differs.json': f247,
  'oil-pump/looked-over.json': f248,
  'oil-pump/properties.json': f249,
  'oil-pump/spoiled.json': f250,
  'phrases.json': f251,
  'pushrod/bent-asks-why.json': f252,
  'pushrod/bent.json': f253,
  'pushrod/ends-ask-mates.json': f254,
  'pushrod/ends-worn.json': f255,
  'pushrod/limits.json': f256,
  'pushrod/looks-sound.json': f257,
  'pushrod/properties.json': f258,
  'pushrod/rolls-doubtful.json': f259,
  'pushrod/runout-asks-why.json': f260,
  'pushrod/runs-out.json': f261,
  'pushrod/side-asks-plate.json': f262,
  'pushrod/side-worn.json': f263,
  'pushrod/soft-in-plate.json': f264,
  'pushrod/straight.json': f265,
  'pushrod/suits-its-guide.json': f266,
  'pushrod/was-straightened.json': f267,
  'retainer/cap-misfits.json': f268,
  'retainer/clears-seal.json': f269,
  'retainer/cracked.json': f270,
  'retainer/keepers-sink-deep.json': f271,
  'retainer/keepers-sound.json': f272,
  'retainer/keepers-stand-uneven.json': f273,
  'retainer/keepers-worn.json': f274,
  'retainer/limits.json': f275,
  'retainer/looks-sound.json': f276,
  'retainer/mixed-family.json': f277,
  'retainer/multi-groove-gap.json': f278,
  'retainer/offset-shifts.json': f279,
  'retainer/properties.json': f280,
  'retainer/rotator-stays.json': f281,
  'retainer/rotator-swapped.json': f282,
  'retainer/single-groove-touch.json': f283,
  'retainer/strikes-seal.json': f284,
  'retainer/taper-by-side.json': f285,
  'retainer/worn-out.json': f286,
  'rocker-stud/bent-stud.json': f287,
  'rocker-stud/drag-proved.json': f288,
  'rocker-stud/gauge-fails.json': f289,
  'rocker-stud/groove-asks-pushrod.json': f290,
  'rocker-stud/groove-condemns.json': f291,
  'rocker-stud/groove-measured.json': f292,
  'rocker-stud/hole-gauge-fails.json': f293,
  'rocker-stud/hole-listed.json': f294,
  'rocker-stud/hole-open.json': f295,
  'rocker-stud/limits.json': f296,
  'rocker-stud/new-nut-slips.json': f297,
  'rocker-stud/nut-drag-low.json': f298,
  'rocker-stud/nut-holds.json': f299,
  'rocker-stud/nut-runs-free.json': f300,
  'rocker-stud/polish-looks-further.json': f301,
  'rocker-stud/pressed-stud-loose.json': f302,
  'rocker-stud/pressed-stud-proud.json': f303,
  'rocker-stud/pressed-stud-watch.json': f304,
  'rocker-stud/properties.json': f305,
  'rocker-stud/screw-in-stud-loose.json': f306,
  'rocker-stud/shoulder-smooth.json': f307,
  'rocker-stud/stays-put.json': f308,
  'rocker-stud/straight.json': f309,
  'rocker-stud/thread-beyond-chasing.json': f310,
  'rocker-stud/thread-chase.json': f311,
  'rocker-stud/thread-crest-lost.json': f312,
  'rocker-stud/thread-gauged.json': f313,
  'rocker-stud/thread-pitch-off.json': f314,
  'rocker-stud/thread-sound.json': f315,
  'rocker-stud/thread-turns-lost.json': f316,
  'rocker/cup-smooth.json': f317,
  'rocker/cup-worn.json': f318,
  'rocker/goes-with-grooved-stud.json': f319,
  'rocker/goes-with-measured-groove.json': f320,
  'rocker/limits.json': f321,
  'rocker/out-of-true.json': f322,
  'rocker/pad-marked-stamped.json': f323,
  'rocker/pad-regrind.json': f324,
  'rocker/pad-smooth.json': f325,
  'rocker/pad-worn-out.json': f326,
  'rocker/pivot-damaged.json': f327,
  'rocker/pivot-one-sided.json': f328,
  'rocker/pivot-smooth.json': f329,
  'rocker/properties.json': f330,
  'rocker/shaft-fits.json': f331,
  'rocker/shaft-loose.json': f332,
  'rocker/shaft-stepped.json': f333,
  'rocker/slot-clearance.json': f334,
  'rocker/slot-rubbed-end.json': f335,
  'rocker/slot-rubbed-side.json': f336,
  'rocker/slot-tight.json': f337,
  'rocker/slot-unmarked.json': f338,
  'rocker/sweep-centred.json': f339,
  'rocker/sweep-off.json': f340,
  'rocker/track-off-centre.json': f341,
  'rocker/track-offset-measured.json': f342,
  'rocker/track-wide.json': f343,
  'rocker/true-running.json': f344,
  'seat/angle-off.json': f345,
  'seat/angles-told.json': f346,
  'seat/bare-inner-short.json': f347,
  'seat/bare-outer-short.json': f348,
  'seat/burned-recut.json': f349,
  'seat/centre-high.json': f350,
  'seat/centre-low.json': f351,
  'seat/copper-dust.json': f352,
  'seat/cracked.json': f353,
  'seat/cut-as-planned.json': f354,
  'seat/cut-hard-skin-tested.json': f355,
  'seat/depth-known.json': f356,
  'seat/dull-insert-noted.json': f357,
  'seat/face-not-bare.json': f358,
  'seat/face-not-true.json': f359,
  'seat/film-on-seat-shows-face.json': f360,
  'seat/gas-inserts-matched.json': f361,
  'seat/guide-renewed.json': f362,
  'seat/hard-skin-cut.json': f363,
  'seat/head-takes-no-insert.json': f364,
  'seat/insert-burned.json': f365,
  'seat/insert-loose.json': f366,
  'seat/insert-set-back.json': f367,
  'seat/insert-too-loose.json': f368,
  'seat/insert-too-tight.json': f369,
  'seat/interference-on-gas.json': f370,
  'seat/lash-closed.json': f371,
  'seat/limits.json': f372,
  'seat/looks-sound.json': f373,
  'seat/new-insert.json': f374,
  'seat/no-metal-left.json': f375,
  'seat/not-all-round.json': f376,
  'seat/pocketed.json': f377,
  'seat/pour-test-weeps.json': f378,
  'seat/properties.json': f379,
  'seat/recut.json': f380,
  'seat/ring-high.json': f381,
  'seat/ring-looked-at.json': f382,
  'seat/ring-low.json': f383,
  'seat/ring-narrow-high.json': f384,
  'seat/ring-narrow-low.json': f385,
  'seat/ring-narrow.json': f386,
  'seat/ring-wide.json': f387,
  'seat/roundness-shown.json': f388,
  'seat/runout-cause.json': f389,
  'seat/runs-out.json': f390,
  'seat/sinks-by-work.json': f391,
  'seat/soft-and-sunk.json': f392,
  'seat/soft-lash-closing.json': f393,
  'seat/soft-on-gas.json': f394,
  'seat/soft-on-petrol.json': f395,
  'seat/soft-seat-watched.json': f396,
  'seat/spun-shows-place.json': f397,
  'seat/stock-spent.json': f398,
  'seat/sunk-try-new-valve.json': f399,
  'seat/sunk-with-new-valve.json': f400,
  'seat/thirty-degree-seat.json': f401,
  'seat/throat-cutter-too-flat.json': f402,
  'seat/top-cutter-too-steep.json': f403,
  'seat/vacuum-below-mates.json': f404,
  'seat/vacuum-falls.json': f405,
  'seat/vacuum-guide-open.json': f406,
  'seat/vacuum-low.json': f407,
  'sources/army-od1001.json': f408,
  'sources/army-tm-1-1500-204-23-1.json': f409,
  'sources/army-tm-1-1500-204-23-6.json': f410,
  'sources/army-tm-1-1500-204-23-9.json': f411,
  'sources/army-tm-10-3510-209-24.json': f412,
  'sources/army-tm-10-3930-621-34.json': f413,
  'sources/army-tm-10-3930-653-14.json': f414,
  'sources/army-tm-10-3930-659-34.json': f415,
  'sources/army-tm-10-3930-671-24.json': f416,
  'sources/army-tm-5-1940-322-24.json': f417,
  'sources/army-tm-5-3805-255-14.json': f418,
  'sources/army-tm-5-3805-262-34.json': f419,
  'sources/army-tm-5-3805-298-23-2.json': f420,
  'sources/army-tm-5-3810-289-34-water-holes.json': f421,
  'sources/army-tm-5-3810-289-34.json': f422,
  'sources/army-tm-5-3810-295-34.json': f423,
  'sources/army-tm-5-3810-306-34-head.json': f424,
  'sources/army-tm-5-3810-306-34.json': f425,
  'sources/army-tm-5-3820-256-24-5.json': f426,
  'sources/army-tm-5-3825-230-14.json': f427,
  'sources/army-tm-5-4320-240-15.json': f428,
  'sources/army-tm-5-4320-300-14.json': f429,
  'sources/army-tm-5-6115-400-35.json': f430,
  'sources/army-tm-5-6115-593-34.json': f431,
  'sources/army-tm-55-1905-223-24-5.json': f432,
  'sources/army-tm-9-2320-260-34-1.json': f433,
  'sources/army-tm-9-2320-366-34-4.json': f434,
  'sources/army-tm-9-2815-254-24.json': f435,
  'sources/army-tm-9-2815-255-24.json': f436,
  'sources/army-tm-9-4310-397-14.json': f437,
  'sources/army-tm-9-4940-549-14.json': f438,
  'sources/army-tm-9-6115-604-34.json': f439,
  'sources/army-tm-9-8000.json': f440,
  'sources/astm-e1417.json': f441,
  'sources/astm-e1444.json': f442,
  'sources/clean-air-act.json': f443,
  'sources/memory.json': f444,
  'sources/navy-14076-lash-caps.json': f445,
  'sources/navy-14329.json': f446,
  'sources/navy-engineman-2-broken-valves.json': f447,
  'sources/navy-engineman-2-pressure-tests.json': f448,
  'sources/navy-navedtra-14076.json': f449,
  'sources/normal-quantiles.json': f450,
  'sources/osha-abrasive-wheels.json': f451,
  'sources/osha-asbestos.json': f452,
  'sources/osha-beryllium.json': f453,
  'sources/osha-hydroxide.json': f454,
  'sources/osha-lead.json': f455,
  'sources/practice-air-held-valves.json': f456,
  'sources/practice-always-new.json': f457,
  'sources/practice-annealed-heads.json': f458,
  'sources/practice-blasting.json': f459,
  'sources/practice-cam-change.json': f460,
  'sources/practice-camshaft-look.json': f461,
  'sources/practice-chamber-volumes.json': f462,
  'sources/practice-charred-seals.json': f463,
  'sources/practice-coil-bind.json': f464,
  'sources/practice-cold-pressure-test.json': f465,
  'sources/practice-core-plugs.json': f466,
  'sources/practice-corroded-ports.json': f467,
  'sources/practice-crack-repair.json': f468,
  'sources/practice-crack-sites.json': f469,
  'sources/practice-crack-test.json': f470,
  'sources/practice-deck-finish.json': f471,
  'sources/practice-deck-flatness.json': f472,
  'sources/practice-exhaust-sets.json': f473,
  'sources/practice-first-run.json': f474,
  'sources/practice-flat-tappet-change.json': f475,
  'sources/practice-flat-tappet-loads.json': f476,
  'sources/practice-gas-isolation.json': f477,
  'sources/practice-gas-seats.json': f478,
  'sources/practice-guide-clearance.json': f479,
  'sources/practice-guide-fit.json': f480,
  'sources/practice-guide-measuring.json': f481,
  'sources/practice-guide-plate.json': f482,
  'sources/practice-guide-repair.json': f483,
  'sources/practice-guide-tops.json': f484,
  'sources/practice-head-bolt-stretch.json': f485,
  'sources/practice-head-bolts.json': f486,
  'sources/practice-head-thickness.json': f487,
  'sources/practice-hot-parts.json': f488,
  'sources/practice-intake-face.json': f489,
  'sources/practice-keeper-families.json': f490,
  'sources/practice-keeper-groove.json': f491,
  'sources/practice-keepers.json': f492,
  'sources/practice-leak-tests.json': f493,
  'sources/practice-lifter-mix.json': f494,
  'sources/practice-lifter-preload.json': f495,
  'sources/practice-limits-of-advice.json': f496,
  'sources/practice-missed-cracks.json': f497,
  'sources/practice-offset-keepers.json': f498,
  'sources/practice-oil-pump-look.json': f499,
  'sources/practice-order-of-work.json': f500,
  'sources/practice-pairs.json': f501,
  'sources/practice-performance-rebuild.json': f502,
  'sources/practice-plug-threads.json': f503,
  'sources/practice-positions.json': f504,
  'sources/practice-pump-seals.json': f505,
  'sources/practice-pushrods.json': f506,
  'sources/practice-repair-or-exchange.json': f507,
  'sources/practice-retainer-seal-room.json': f508,
  'sources/practice-return-checks.json': f509,
  'sources/practice-rocker-fit.json': f510,
  'sources/practice-rocker-lift.json': f511,
  'sources/practice-rotators.json': f512,
  'sources/practice-seal-kinds.json': f513,
  'sources/practice-seal-set.json': f514,
  'sources/practice-seal-spring-room.json': f515,
  'sources/practice-seal-test.json': f516,
  'sources/practice-seat-contact.json': f517,
  'sources/practice-seat-cutters.json': f518,
  'sources/practice-seat-inserts.json': f519,
  'sources/practice-seat-sink.json': f520,
  'sources/practice-seat-width.json': f521,
  'sources/practice-side-play.json': f522,
  'sources/practice-sodium-valves.json': f523,
  'sources/practice-soft-seats.json': f524,
  'sources/practice-special-valves.json': f525,
  'sources/practice-spring-fit.json': f526,
  'sources/practice-spring-height.json': f527,
  'sources/practice-spring-match.json': f528,
  'sources/practice-spring-sets.json': f529,
  'sources/practice-spring-test.json': f530,
  'sources/practice-springs-at-overhaul.json': f531,
  'sources/practice-stem-surface.json': f532,
  'sources/practice-stem-wear.json': f533,
  'sources/practice-straighten-first.json': f534,
  'sources/practice-struck-valves.json': f535,
  'sources/practice-stud-breakage.json': f536,
  'sources/practice-stud-groove.json': f537,
  'sources/practice-stud-holes.json': f538,
  'sources/practice-stud-in-boss.json': f539,
  'sources/practice-test-pressure.json': f540,
  'sources/practice-thread-chase.json': f541,
  'sources/practice-tip-allowance.json': f542,
  'sources/practice-tip-stand.json': f543,
  'sources/practice-titanium.json': f544,
  'sources/practice-valve-cleaning.json': f545,
  'sources/practice-valve-face.json': f546,
  'sources/practice-valve-head.json': f547,
  'sources/practice-valve-margin.json': f548,
  'sources/practice-valve-tip.json': f549,
  'sources/practice-wash-by-material.json': f550,
  'sources/practice-work-order.json': f551,
  'sources/sae-710356.json': f552,
  'sources/sae-871622.json': f553,
  'sources/sae-932780.json': f554,
  'sources/wang-1998-valve-seats.json': f555,
  'spring/bind-margin-kept.json': f556,
  'spring/binds.json': f557,
  'spring/bright-spots-ask.json': f558,
  'spring/broken.json': f559,
  'spring/damper-step.json': f560,
  'spring/free-length-kept.json': f561,
  'spring/height-in-band.json': f562,
  'spring/height-shim.json': f563,
  'spring/height-short.json': f564,
  'spring/inside-smooth.json': f565,
  'spring/limits.json': f566,
  'spring/load-kept.json': f567,
  'spring/odd-one-out.json': f568,
  'spring/out-of-square.json': f569,
  'spring/properties.json': f570,
  'spring/stands-square.json': f571,
  'spring/sunk-too-far.json': f572,
  'spring/surface-fault.json': f573,
  'spring/surface-sound.json': f574,
  'spring/too-short.json': f575,
  'spring/weak.json': f576,
  'stem-seal/been-off.json': f577,
  'stem-seal/charred.json': f578,
  'stem-seal/failed.json': f579,
  'stem-seal/is-o-ring.json': f580,
  'stem-seal/is-positive.json': f581,
  'stem-seal/is-umbrella.json': f582,
  'stem-seal/properties.json': f583,
  'stem-seal/undisturbed.json': f584,
  'stem-seal/word-and-test-differ.json': f585,
  'valve/clean-by-hand.json': f586,
  'valve/crack-found.json': f587,
  'valve/face-burned.json': f588,
  'valve/face-not-ground.json': f589,
  'valve/face-one-sided.json': f590,
  'valve/face-refaced.json': f591,
  'valve/face-stock-spent.json': f592,
  'valve/face-through-facing.json': f593,
  'valve/face-true.json': f594,
  'valve/face-trued.json': f595,
  'valve/face-untrue-not-ground.json': f596,
  'valve/filled-valve-hold.json': f597,
  'valve/filled-valve-mark.json': f598,
  'valve/head-broken-off.json': f599,
  'valve/head-cracked.json': f600,
  'valve/head-misshapen.json': f601,
  'valve/head-struck.json': f602,
  'valve/keeper-groove-holds.json': f603,
  'valve/keeper-groove-loose.json': f604,
  'valve/keeper-groove-worn.json': f605,
  'valve/limits.json': f606,
  'valve/looks-sound.json': f607,
  'valve/margin-enough.json': f608,
  'valve/margin-exhaust-thin.json': f609,
  'valve/margin-gone-after-facing.json': f610,
  'valve/margin-thin.json': f611,
  'valve/mushroom-before-drawing.json': f612,
  'valve/nitrided-not-ground.json': f613,
  'valve/properties.json': f614,
  'valve/stem-bent.json': f615,
  'valve/stem-in-size.json': f616,
  'valve/stem-necked.json': f617,
  'valve/stem-nicks-coated.json': f618,
  'valve/stem-nicks.json': f619,
  'valve/stem-plating-worn.json': f620,
  'valve/stem-runout-kept.json': f621,
  'valve/stem-runout-over.json': f622,
  'valve/stem-scored.json': f623,
  'valve/stem-undersize.json': f624,
  'valve/stem-wear-asks.json': f625,
  'valve/tip-broken.json': f626,
  'valve/tip-mushroomed.json': f627,
  'valve/tip-no-stock.json': f628,
  'valve/tip-not-ground.json': f629,
  'valve/tip-reground.json': f630,
  'valve/tip-soft.json': f631,
  'valve/tip-stands-low.json': f632,
  'valve/tip-stock.json': f633,
  'valve/tip-taken-over.json': f634,
  'valve/titanium-not-ground.json': f635,
  'valve/work-told.json': f636,
}
