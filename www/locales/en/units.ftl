# Units: as they are written and, where it says so, as they are spoken.

unit-inches = inches
unit-millimetres = millimetres
unit-pounds = pounds
unit-kilograms = kilograms
unit-ounces = ounces
unit-grams = grams
unit-grams-per-cc = grams per cc
unit-cubic-centimetres = cubic centimetres
unit-millilitres = millilitres
unit-microinches = microinches
unit-micrometres = micrometres
unit-degrees = degrees
unit-miles-an-hour = miles an hour
unit-kilometres-an-hour = kilometres an hour
unit-miles-per-hour = miles per hour
unit-kilometres-per-hour = kilometres per hour
unit-feet = feet
unit-metres = metres
unit-turns-a-minute = turns a minute
unit-degrees-a-foot = degrees a foot
unit-degrees-a-metre = degrees a metre
unit-seconds = seconds
unit-percent = percent
unit-grit = grit
# Between the ends of a range, as in "17 to 18".
range-to = to
# What stands before a decimal.
decimal-mark = .
# What parts thousands.
thousands-mark = ,
