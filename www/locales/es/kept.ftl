# Qué pasa al poner algo en el estante y al quitarlo.

kept-memory-only = Este navegador no deja que la página lo guarde.
kept-newer = Otra pestaña tiene el Estante en una versión más nueva de esta página.
kept-broken = Lo que este navegador guardó del Estante no se puede abrir.
kept-deleted = Se borró lo que el navegador guardaba del Estante.
kept-anew = Se borró entretanto lo que el navegador guardaba del Estante. Lo que se ve aquí se guardó de nuevo.
kept-full-storage = El espacio del navegador para esta página está lleno.
kept-not = El navegador no lo guardó ({ $why }).
kept-full = El estante está lleno: hay { $most } en él. Quita algo, o guárdalo en un archivo y empieza de nuevo.
kept-refused = No se puso en el estante. { $why }
kept-name-long = Su nombre tiene { $letters } caracteres; el estante acepta { $most } como máximo.
kept-note-long = Su nota tiene { $letters } caracteres; el estante acepta { $most } como máximo.
kept-put = En el estante: { $name }.
kept-put-visit = En el estante, pero solo durante esta visita: { $name }. { $why } Guárdala en un archivo.
kept-put-again = Otra vez en el estante: { $name }.
kept-put-again-visit = Otra vez en el estante, pero solo durante esta visita: { $name }. { $why } Guárdala en un archivo.
kept-copy = { $name }, copia
kept-changed-elsewhere = Mientras tanto cambió en otra pestaña, así que sigue en el estante.
kept-not-taken = No se pudo quitar del estante: { $why }.
kept-taken = Quitada del estante: { $name }.
kept-taken-unread = Quitada del estante: la que no se puede leer.
kept-not-put-back = No se pudo devolver: { $why }.
kept-put-back = Devuelta como estaba.
kept-put-back-name = Devuelta: { $name }.
kept-changed = Cambiada: { $name }.
kept-changed-beside = { $name } cambió o se quitó mientras tanto en otra pestaña, así que la tuya queda a su lado, aparte.
kept-all = Ahora todo el estante está guardado.
kept-still-not = Sigue sin guardarse. { $why }
kept-no-new = No se pudo empezar un estante nuevo: { $why }.
kept-new = Hay un estante nuevo.

## Archivos

kept-file = estante { $day }
kept-file-unread = ilegible { $id }
kept-kinds = una bola, un tiro o un estante
kept-not-read = No se leyó { $file }. { $why }
kept-with-lane-shot = { $taken } Un archivo de bola no tiene tiro: está con el que hay ahora en la Pista.
kept-one-unread = Una no se pudo leer. { $why }
kept-named-unread = No se pudo leer «{ $name }». { $why }
kept-nothing-new = Nada nuevo en { $file }.
kept-from = De { $file } al estante: { $many }.
kept-left = { $many ->
        [one] 1 ya estaba
       *[other] { $many } ya estaban
    } o no había sitio.
kept-not-by-browser = El navegador no las guarda: guarda el estante en un archivo.

## Lo que no es una ficha del estante

kept-no-record = Esto no es una ficha como las que escribe la página.
kept-ball-elsewhere = Su bola está en otro archivo, { $file }. Abre primero ese y el tiro en el Banco y luego ponlos aquí.
kept-oil-elsewhere = Su aceite está en otro archivo, { $file }. Abre primero ese y el tiro en el Banco y luego ponlos aquí.
