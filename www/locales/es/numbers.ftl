# Números puestos lado a lado y las palabras del oficio para decir dónde cae un valor.

numbers-changed-by = cambió en
numbers-number = Número
numbers-change = Cambio
numbers-none = ninguno
band-low = bajo
band-medium = medio
band-high = alto
band-little = poco
band-usual = habitual
band-much = mucho
