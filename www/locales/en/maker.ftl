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
maker-density = density
maker-diameter = diameter
maker-all-of-it = size of all of it
maker-size = size
maker-place-x = place along x
maker-place-y = place along y
maker-place-z = place along z
maker-core-x = place of the core along x
maker-core-y = place of the core along y
maker-core-z = place of the core along z
maker-turn-x = turn about x
maker-turn-y = turn about y
maker-turn-z = turn about z
maker-tilt-x = tilt about x
maker-tilt-y = tilt about y
maker-squash-x = squash along its x
maker-squash-y = squash along its y
maker-squash-z = squash along its z
maker-height = height
maker-bottom = diameter at the bottom
maker-top = diameter at the top
maker-ring = diameter of the ring
maker-tube = thickness of the ring
maker-edge-x = size along its x
maker-edge-y = size along its y
maker-edge-z = size along its z
maker-profile-wide = width of the profile
maker-profile-tall = height of the profile

## A ball's numbers

maker-weight = weight
maker-low-rg = low RG
maker-middle-rg = middle RG
maker-high-rg = high RG
maker-differential = differential
maker-intermediate = intermediate differential
maker-top-weight = top weight
maker-pin-to-cg = pin to CG
maker-low-rg-mark = low-RG axis from the pin
maker-high-rg-mark = high-RG axis from its mark
maker-least-cover = least cover
maker-want-weight = Weight
maker-want-low-rg = Low RG
maker-want-differential = Differential
maker-want-intermediate = Intermediate differential
maker-want-top-weight = Top weight
maker-want-least-cover = Least cover

## What a pour costs

maker-pours = pours
maker-moulds = moulds
maker-settings = pieces set into a mould
maker-cuts = cuts
maker-kilograms = kilograms mixed

## Files

maker-tolerances-file = Tolerances file
maker-tolerances-open = Open tolerances
maker-tolerances-save = Save tolerances
maker-target-file = Target file
maker-target-open = Open target
maker-target-save = Save target
