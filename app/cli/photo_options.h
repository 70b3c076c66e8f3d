#pragma once

#include "app/cli/commands.h"
#include "app/words/photo_words.h"
#include "app/words/place_words.h"
#include "core/home/photo.h"
#include "core/journal/photo_book.h"
#include "core/photo/photo_file.h"

#include <atomic>
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

Json json_of(const home::Photo& photo);

/// While one is there, Ctrl-C sets a flag instead of ending the program, so that what is begun can be finished.
class Interrupt {
public:
    Interrupt();
    Interrupt(const Interrupt&) = delete;
    Interrupt& operator=(const Interrupt&) = delete;
    ~Interrupt();
    static const std::atomic<bool>& flag();

private:
    void (*before_)(int);
};

/// A counter on standard error, where that is a terminal: "12 of 1000 photos".
void show_progress(std::size_t done, std::size_t total, const char* things);

} // namespace lathhouse::cli
