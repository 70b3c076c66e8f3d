#include "app/models/card_model.h"

#include "app/models/typed_path.h"
#include "core/base/csv.h"
#include "core/photo/scale_card.h"

#include <QFileInfo>

namespace lathhouse::models {

void CardModel::set_there(bool there)
{
    if (there != file_is_there_) {
        file_is_there_ = there;
        emit fileIsThereChanged();
    }
}

void CardModel::clear()
{
    clear_error();
    say({});
    set_there(false);
}

void CardModel::write(const QString& path, bool replace)
{
    clear();
    QString file = whole_path(path);
    if (file.isEmpty()) {
        fail_with(tr("Say which file is to be written."));
        return;
    }
    if (QFileInfo(file).suffix().isEmpty() && !QFileInfo(file).isDir()) {
        file += QStringLiteral(".svg");
    }
    if (!replace && QFileInfo(file).isFile()) {
        fail_with(tr("%1 is there already. Replace it, or take another name.").arg(file));
        set_there(true);
        return;
    }
    work<void>([target = to_path(file)] { return write_file_whole(target, photo::scale_card_svg()); },
               [this, file](const Result<void>& written) {
                   if (!written) {
                       fail(written.error());
                       return;
                   }
                   say(tr("Wrote the card to %1. Print it at 100 % and check with a ruler that its targets are 100 mm apart.").arg(file));
               });
}

} // namespace lathhouse::models
