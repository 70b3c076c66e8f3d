#pragma once

#include "app/models/year_words.h"
#include "core/home/history.h"

#include <QString>
#include <QStringList>

namespace lathhouse::models {

/// What is asked beside the date of something that happened: "Which pest"; empty where nothing is.
QString detail_asked(home::EventKind kind);
/// Puts what was typed to that into the event, under the names by which the program reads it: ppm of a feed, which pest,
/// with what it was treated, the lowest of a cold night, the product of a spray. Blank is left out. Gives what is wrong
/// with it, a whole sentence; empty where nothing is.
QString add_detail(home::Event& event, const QString& typed, const YearWords& words);
/// Names of the pests that the tables know.
QStringList pest_names();

} // namespace lathhouse::models
