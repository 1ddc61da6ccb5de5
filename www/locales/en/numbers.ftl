# Numbers beside each other, and the trade's words for where a value lies.

numbers-changed-by = changed by
numbers-number = Number
numbers-change = Change
numbers-none = none
band-low = low
band-medium = medium
band-high = high
band-little = little
band-usual = usual
band-much = much
