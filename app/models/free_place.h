#pragma once

#include <QString>

namespace lathhouse::models {

/// A name that every file system takes, of words in any language.
QString file_name(const QString& words);

/// A path in the folder for documents, or in the home folder where there is none, that is not taken yet: a number comes
/// behind the name where it must. extension: with its point; may be empty.
QString free_place(const QString& name, const QString& extension);

} // namespace lathhouse::models
