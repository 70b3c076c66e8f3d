#pragma once

#include <QString>

namespace lathhouse::models {

/// A file's name of words in any language: letters and digits in lower case with a dash for all between; `otherwise` where
/// nothing is left. Every file system takes it, and no program takes it for an option.
QString file_name(const QString& words, const QString& otherwise);

/// The folder for documents, or the home folder where nobody made one.
QString documents_folder();

/// A path in that folder that is not taken yet: a number comes behind the name where it must. extension: with its point;
/// may be empty.
QString free_place(const QString& name, const QString& extension);

} // namespace lathhouse::models
