#include "app/models/sheet_model.h"

#include "app/words/refusal.h"

namespace lathhouse::models {

SheetModel::SheetModel(QObject* parent) : QObject(parent)
{
    constexpr int kLate = 400; // Milliseconds; before that nothing is said.
    pool_.setMaxThreadCount(1);
    late_timer_.setSingleShot(true);
    late_timer_.setInterval(kLate);
    connect(&late_timer_, &QTimer::timeout, this, [this] {
        late_ = true;
        emit workingChanged();
    });
}

SheetModel::~SheetModel()
{
    // What was asked to be written is written before the window goes.
    pool_.waitForDone();
}

void SheetModel::start()
{
    if (!started_) {
        started_ = true;
        read();
    }
}

void SheetModel::reload()
{
    started_ = true;
    clear_error();
    read();
}

void SheetModel::follow()
{
    if (started_) {
        read();
    }
}

void SheetModel::begin_work()
{
    if (jobs_++ == 0) {
        late_timer_.start();
        emit workingChanged();
    }
}

void SheetModel::end_work()
{
    if (--jobs_ == 0) {
        late_timer_.stop();
        late_ = false;
        emit workingChanged();
    }
}

void SheetModel::set_known()
{
    if (!known_) {
        known_ = true;
        emit knownChanged();
    }
}

void SheetModel::write_and_read(std::function<Result<void>()> job, std::function<void(const Error&)> otherwise)
{
    work<void>(std::move(job), [this, otherwise = std::move(otherwise)](const Result<void>& done) {
        if (done) {
            emit written();
        } else {
            otherwise(done.error());
        }
        if (jobs_ == 1) { // The one that ends now.
            read();
        }
    });
}

void SheetModel::say(QString words)
{
    said_ = std::move(words);
    emit saidChanged();
}

void SheetModel::fail(const std::string& message)
{
    QString sentence = QString::fromStdString(message);
    if (!sentence.isEmpty()) {
        sentence[0] = sentence[0].toUpper();
    }
    fail_with(sentence + QLatin1Char('.'));
}

void SheetModel::fail(const Error& error)
{
    fail(words::refusal(error));
}

void SheetModel::fail_with(QString sentence, QString instead)
{
    error_ = std::move(sentence);
    instead_ = std::move(instead);
    emit errorChanged();
}

void SheetModel::clear_error()
{
    if (!error_.isEmpty()) {
        error_.clear();
        instead_.clear();
        emit errorChanged();
    }
}

} // namespace lathhouse::models
