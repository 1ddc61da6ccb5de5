# Unidades: cómo se escriben y cómo se dicen.

unit-inches = pulgadas
unit-millimetres = milímetros
unit-pounds = libras
unit-kilograms = kilogramos
unit-ounces = onzas
unit-grams = gramos
unit-grams-per-cc = gramos por centímetro cúbico
unit-cubic-centimetres = centímetros cúbicos
unit-millilitres = mililitros
unit-microinches = micropulgadas
unit-micrometres = micrómetros
unit-degrees = grados
unit-miles-an-hour = millas por hora
unit-kilometres-an-hour = kilómetros por hora
unit-miles-per-hour = millas por hora
unit-kilometres-per-hour = kilómetros por hora
unit-feet = pies
unit-metres = metros
unit-turns-a-minute = vueltas por minuto
unit-degrees-a-foot = grados por pie
unit-degrees-a-metre = grados por metro
unit-seconds = segundos
unit-percent = por ciento
unit-grit = grano
# Entre los extremos de un intervalo, como en «17 a 18».
range-to = a
# Lo que va antes de los decimales.
decimal-mark = ,
# Lo que separa los miles: un espacio fino.
thousands-mark = {"\u202F"}
