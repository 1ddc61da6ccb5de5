# The maker's jobs: what they share. Names of a ball's numbers, of its controls and of tolerances.

maker-working = Working it out …
maker-working-anew = Working it out anew …
maker-range = { $from } to { $to }
maker-times = times
maker-times-value = { $value } times
maker-and = { $a } and { $b }

## What a control is called

maker-ball = ball
maker-control = { $part }: { $what }

## A ball's numbers

maker-weight = weight
maker-low-rg = low RG
maker-differential = differential
maker-intermediate = intermediate differential
maker-top-weight = top weight
maker-least-cover = least cover
maker-want-weight = Weight
maker-want-low-rg = Low RG
maker-want-differential = Differential
maker-want-intermediate = Intermediate differential
maker-want-top-weight = Top weight
maker-want-least-cover = Least cover

## Files

maker-tolerances-file = Tolerances file
maker-tolerances-open = Open tolerances
maker-tolerances-save = Save tolerances
maker-target-file = Target file
maker-target-open = Open target
maker-target-save = Save target
maker-numbers-back = Back to the numbers before
maker-numbers-are-back = The numbers from before are back.
