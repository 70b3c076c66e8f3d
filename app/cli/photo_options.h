#pragma once

#include "app/cli/commands.h"
#include "app/words/photo_words.h"
#include "app/words/place_words.h"
#include "core/home/photo.h"
#include "core/journal/photo_book.h"
#include "core/photo/photo_file.h"

#include <string>
#include <vector>

namespace lathhouse::cli {

/// `add photos`.
void add_photo_adder(Commands& commands, CLI::App& group);
/// `log photo`.
void add_photo_log(Commands& commands, CLI::App& group);
/// `list photos`.
void add_photo_list(Commands& commands, CLI::App& group);
/// `show photo`.
void add_photo_show(Commands& commands, CLI::App& group);
/// `export photos`, `export comparison`, `export strip`, `export card`.
void add_photo_exports(Commands& commands, CLI::App& group);

Json photo_json(const home::Photo& photo);

} // namespace lathhouse::cli
