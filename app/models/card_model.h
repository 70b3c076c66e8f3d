#pragma once

#include "app/models/sheet_model.h"

namespace lathhouse::models {

/// The scale card that stands beside a plant in a photo, as a file to print.
class CardModel : public lathhouse::models::SheetModel {
    Q_OBJECT
    QML_ELEMENT
    /// Whether nothing was written because a file of that name is there.
    Q_PROPERTY(bool fileIsThere READ fileIsThere NOTIFY fileIsThereChanged)

public:
    explicit CardModel(QObject* parent = nullptr) : SheetModel(parent) {}

    bool fileIsThere() const { return file_is_there_; }
    /// path: a file, .svg where nothing is said. A file that is there is replaced where that is said.
    Q_INVOKABLE void write(const QString& path, bool replace = false);
    /// Takes away what was said of the last.
    Q_INVOKABLE void clear();

signals:
    void fileIsThereChanged();

protected:
    void read() override {}

private:
    void set_there(bool there);
    bool file_is_there_ = false;
};

} // namespace lathhouse::models
