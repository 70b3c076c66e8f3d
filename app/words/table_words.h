#pragma once

#include <string>
#include <vector>

namespace lathhouse::words {

/// The reader's, "" for English.
const std::string& language();

/// A text of the tables (a caution, a hazard, where a pest sits, a crop, what was measured) for the reader; as it
/// stands in the table where nothing else is known. Texts and their translations: data/table_texts.csv.
std::string table_text(const std::string& text);

/// What growers who speak the reader's language call a kind; `usual` where none is known. These names are common usage,
/// no source says them, and they name more than one plant more often than botanical names do: show both.
/// Names: data/kind_names.csv.
std::string common_name(const std::string& botanical_name, const std::string& usual);

/// Everything that growers who speak the reader's language call it, the usual name first; empty for English and where none
/// is known.
std::vector<std::string> common_names(const std::string& botanical_name);

/// Its names in every language but English, for whoever looks for it.
std::vector<std::string> foreign_names(const std::string& botanical_name);

/// What a text of the tables is called in every language but English.
std::vector<std::string> foreign_texts(const std::string& text);

/// The text of the tables that somebody means who says it in any language: "Tomate" is "Tomato". As it was said where it
/// is none.
std::string english_text(const std::string& said);

} // namespace lathhouse::words
