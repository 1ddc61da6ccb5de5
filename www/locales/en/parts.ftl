# Fields, words and buttons that many rooms share.

parts-not-a-number = Not a number yet; still using { $value }.
parts-only = Only from { $low } to { $high }; still using { $still }.
parts-only-whole = Only a whole number from { $low } to { $high }; still using { $still }.
parts-drawn = See it drawn<word> { $word }</word>
parts-stopped = Stopped.
parts-stop = Stop
parts-working = { $doing } … { $percent }{"\u00A0"}%
parts-not-done = This could not be worked out. The browser said: { $why }. All else on the page goes on.
parts-again = Try again

# What a cover is and how it was finished

surface-what = What it is and how it was <finish>finished</finish>
surface-family = Family
surface-not-said = not said
surface-polyester = polyester
surface-urethane = urethane
surface-reactive = reactive
surface-finish = Finish
surface-sanded = sanded
surface-polished = sanded, then polished
surface-grit = Grit
surface-says-oil = <polyester>Polyester</polyester>, <urethane>urethane</urethane> or <reactive>reactive</reactive>; <polish>polish</polish> or none. On an oiled lane this changes <friction>friction</friction>, by factors that are a model choice: no figure is published.
surface-says-zones = <polyester>Polyester</polyester>, <urethane>urethane</urethane> or <reactive>reactive</reactive>; <polish>polish</polish> or none. On an oiled lane this changes <friction>friction</friction>. This shot's lane has friction by distance, given as it is: there the cover changes nothing.
