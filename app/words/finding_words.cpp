#include "app/words/finding_words.h"

#include "app/words/phrase.h"

namespace lathhouse::words {

using journal::FindingKind;

std::string what_it_is(FindingKind kind)
{
    switch (kind) {
    case FindingKind::DatabaseDamaged:
        return phrase("The database is damaged");
    case FindingKind::BrokenReference:
        return phrase("A line of the journal leads nowhere");
    case FindingKind::PhotoMissing:
        return phrase("A photo is missing");
    case FindingKind::PhotoAltered:
        return phrase("A photo was altered");
    case FindingKind::PhotoUnreadable:
        return phrase("A photo cannot be read");
    case FindingKind::PhotoUnknown:
        return phrase("A photo is not in the journal");
    case FindingKind::MeasuredPhotoUnknown:
        return phrase("A measurement's photo is unknown");
    case FindingKind::FileUnknown:
        return phrase("A file is not the program's");
    case FindingKind::LeftOver:
        return phrase("Something unfinished is left over");
    }
    return "";
}

std::string what_to_do(FindingKind kind)
{
    switch (kind) {
    case FindingKind::DatabaseDamaged:
        return phrase("copy the folder as it is, restore the latest backup into a new folder; without one, `lathhouse export "
               "csv DIR --salvage` saves what can be read and `lathhouse import csv DIR` makes a household of it");
    case FindingKind::BrokenReference:
        return phrase("restore a backup from before it; without one, `lathhouse export csv DIR` and `lathhouse import csv DIR "
               "--leave-out-broken` make a household without such entries");
    case FindingKind::PhotoMissing:
        return phrase("put the file back from a backup or the camera, by importing it again");
    case FindingKind::PhotoAltered:
        return phrase("put the original back from a backup; the altered one can be kept elsewhere first");
    case FindingKind::PhotoUnreadable:
        return phrase("look at the rights of the file and at the disk; put it back from a backup");
    case FindingKind::PhotoUnknown:
        return phrase("import it if you want it in the journal; else it can be moved away");
    case FindingKind::MeasuredPhotoUnknown:
        return phrase("the value stands as it is; import the photo (`lathhouse add photos FILE`) to see again what was measured, "
               "or measure anew in a photo that is there");
    case FindingKind::FileUnknown:
        return phrase("leave it or move it away; backups do not hold it unless it is below photos/");
    case FindingKind::LeftOver:
        return phrase("delete it when no other lathhouse is at work on the folder");
    }
    return "";
}

} // namespace lathhouse::words
