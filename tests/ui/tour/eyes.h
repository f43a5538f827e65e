#pragma once

#include "core/storage/roster_file.h"

#include <QStringList>
#include <memory>

class QWidget;

namespace tests {

/// What a test program looks for on the tour of the window.
class Eyes
{
public:
    Eyes() = default;
    Eyes(const Eyes &) = delete;
    Eyes &operator=(const Eyes &) = delete;
    virtual ~Eyes() = default;

    /// How a text of the program stands on this screen.
    [[nodiscard]] virtual QString said(const QString &english) const { return english; }
    /// How what a coach wrote stands in this roster; a lifter's name may go on behind it.
    [[nodiscard]] virtual QString written(const QString &text) const { return text; }
    /// The demo roster of the day with a template.
    virtual void makeRoster(const QString &path, QDate today) const = 0;
    /// A roster of nobody.
    virtual void makeEmptyRoster(const QString &path) const = 0;

    /// Before anything is looked at.
    virtual void place(QWidget &) const {}
    /// Fails for what is wrong with the widget in this state.
    /// @param data  what is no matter of words: codes, paths, and what a test types
    virtual void look(QWidget &widget, const QString &state, const QStringList &data) = 0;
    /// The same for a text that is on no widget.
    virtual void read(
        const QString & /*text*/, const QString & /*state*/, const QStringList & /*data*/)
    {
    }
};

/// Each program of the tour has its own.
[[nodiscard]] std::unique_ptr<Eyes> makeEyes();

} // namespace tests
