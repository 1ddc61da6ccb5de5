# The model note: the ways to it and round it; the note itself is docs/model.md, in each language.

model-to-note = What this model leaves out
model-back = Back to the lane
model-print = Print these notes
model-edition = Edition and licences
model-version = Pithball { $version }.
model-file = This is the page as one file: it needs no network.
model-keeping = This browser is about to keep the page for when there is no network.
model-kept = This browser keeps the page: it opens without network.
model-not-kept = This browser does not keep the page: without network it does not open again.
