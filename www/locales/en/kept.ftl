# What comes of putting something on the shelf and taking it off.

kept-memory-only = This browser does not let the page keep it.
kept-newer = Another tab has the shelf in a newer version of this page.
kept-broken = What this browser kept of the shelf cannot be opened.
kept-deleted = What the browser kept of the shelf was deleted.
kept-anew = What the browser kept of the shelf was deleted meanwhile. What is seen here is kept anew.
kept-full-storage = The browser's storage for this page is full.
kept-not = The browser did not keep it ({ $why }).
kept-full = The shelf is full: { $most } stand on it. Take something off, or save it to a file and begin anew.
kept-refused = It was not put on the shelf. { $why }
kept-name-long = Its name has { $letters } characters; the shelf takes at most { $most }.
kept-note-long = Its note has { $letters } characters; the shelf takes at most { $most }.
kept-put = Put on the shelf: { $name }.
kept-put-visit = Put on the shelf, but only for this visit: { $name }. { $why } Save it to a file.
kept-put-again = Put on the shelf once more: { $name }.
kept-put-again-visit = Put on the shelf once more, but only for this visit: { $name }. { $why } Save it to a file.
kept-copy = { $name }, copy
kept-changed-elsewhere = It was changed in another tab meanwhile, so it stays on the shelf.
kept-not-taken = It could not be taken off the shelf: { $why }.
kept-taken = Taken off the shelf: { $name }.
kept-taken-unread = Taken off the shelf: the one that cannot be read.
kept-not-put-back = It could not be put back: { $why }.
kept-put-back = Put back as it was.
kept-put-back-name = Put back: { $name }.
kept-changed = Changed: { $name }.
kept-changed-beside = { $name } was changed or taken off in another tab meanwhile, so yours is kept beside it, by itself.
kept-all = All of the shelf is kept now.
kept-still-not = Still not kept. { $why }
kept-no-new = No new shelf could be begun: { $why }.
kept-new = A new shelf is begun.

## Files

kept-file = shelf { $day }
kept-file-unread = unreadable { $id }
kept-kinds = a ball, a shot or a shelf
kept-not-read = { $file } was not read. { $why }
kept-with-lane-shot = { $taken } A ball file holds no shot: it stands with the one on the Lane now.
kept-one-unread = One could not be read. { $why }
kept-named-unread = "{ $name }" could not be read. { $why }
kept-nothing-new = Nothing new in { $file }.
kept-from = { $many } put on the shelf from { $file }.
kept-left = { $many ->
        [one] 1 was
       *[other] { $many } were
    } there already or had no room.
kept-not-by-browser = The browser does not keep them: save the shelf to a file.

## What is no record of the shelf

kept-no-record = This is not a record as the page writes them.
kept-ball-elsewhere = Its ball is in another file, { $file }. Open that one and the shot on the bench first, then put them here.
kept-oil-elsewhere = Its oil is in another file, { $file }. Open that one and the shot on the bench first, then put them here.
