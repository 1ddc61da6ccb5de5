# La nota del modelo: cómo se llega a ella y lo que la rodea; la nota misma es docs/model.es.md.

model-to-note = Lo que este modelo deja fuera
model-back = Volver a la pista
model-print = Imprimir estas notas
model-edition = Edición y licencias
model-version = Pithball { $version }.
model-file = Esta es la página en un solo archivo: no necesita red.
model-keeping = Este navegador está a punto de guardar la página para cuando no haya red.
model-kept = Este navegador guarda la página: se abre sin red.
model-not-kept = Este navegador no guarda la página: sin red no se vuelve a abrir.
