#pragma once

#include "app/models/behind_window.h"
#include "core/base/result.h"

#include <QMetaObject>
#include <QObject>
#include <QThreadPool>
#include <QTimer>
#include <QtQml/qqmlregistration.h>

#include <functional>
#include <memory>
#include <utility>

namespace lathhouse::models {

/// What the models of the pages share: one thread for reading, working out and writing, in the order asked
/// for; words for what is done, for what went wrong, and for waiting that takes long.
class SheetModel : public QObject {
    Q_OBJECT
    QML_ANONYMOUS
    Q_PROPERTY(bool working READ working NOTIFY workingChanged)
    /// Work has gone on for so long that it needs a word.
    Q_PROPERTY(bool late READ late NOTIFY workingChanged)
    /// Whether there is anything to show yet.
    Q_PROPERTY(bool known READ known NOTIFY knownChanged)
    /// What went wrong, a whole sentence; empty where nothing did.
    Q_PROPERTY(QString error READ error NOTIFY errorChanged)
    /// What was likely meant where `error` is of something typed, as one would type it; empty where nobody knows.
    Q_PROPERTY(QString instead READ instead NOTIFY errorChanged)
    /// What was done last, in words.
    Q_PROPERTY(QString said READ said NOTIFY saidChanged)

public:
    explicit SheetModel(QObject* parent = nullptr);
    ~SheetModel() override;

    bool working() const { return jobs_ > 0; }
    bool late() const { return late_; }
    bool known() const { return known_; }
    QString error() const { return error_; }
    QString instead() const { return instead_; }
    QString said() const { return said_; }

    /// Reads what is shown, once; `reload` reads it again.
    Q_INVOKABLE void start();
    Q_INVOKABLE void reload();
    /// Reads again where something was read before.
    void follow();
    /// Takes the error's sentence away.
    Q_INVOKABLE void forgive() { clear_error(); }
    /// Takes the words on what was done last away, once something else was done elsewhere.
    void hush() { say({}); }

signals:
    void workingChanged();
    void knownChanged();
    void errorChanged();
    void saidChanged();
    /// Something was written into the household.
    void written();

protected:
    virtual void read() = 0;

    /// `job` runs in the thread and holds values only; `done` gets its result here.
    template <class Value>
    void work(std::function<Result<Value>()> job, std::function<void(Result<Value>)> done)
    {
        begin_work();
        pool_.start([this, job = std::move(job), done = std::move(done)] {
            stay_behind_window();
            auto result = std::make_shared<Result<Value>>(job());
            QMetaObject::invokeMethod(
                this,
                [this, result, done] {
                    done(std::move(*result));
                    end_work();
                },
                Qt::QueuedConnection);
        });
    }
    /// `job` writes in the thread; then everything is read again, unless more waits. `otherwise` is told first why it
    /// could not be written.
    void write_and_read(std::function<Result<void>()> job, std::function<void(const Error&)> otherwise);
    void say(QString words);
    void fail(const std::string& message);
    void fail(const Error& error); ///< In the reader's language.
    void fail_with(QString sentence, QString instead = {});
    void clear_error();
    void set_known();
    /// Jobs that wait or run.
    int jobs() const { return jobs_; }

private:
    void begin_work();
    void end_work();

    bool started_ = false;
    bool known_ = false;
    bool late_ = false;
    int jobs_ = 0;
    QString error_;
    QString instead_;
    QString said_;
    QTimer late_timer_;
    QThreadPool pool_;
};

} // namespace lathhouse::models
