#pragma once

#include "tests/support/roster_fixture.h"
#include "tests/support/set_clock.h"
#include "tests/ui/tour/eyes.h"
#include "ui/look/theme.h"
#include "ui/window/main_window.h"

#include <QApplication>
#include <functional>
#include <gmock/gmock.h>

namespace tests {

/// The window on a roster of the eyes', for a tour of its pages and dialogs. A new page or dialog
/// joins the tour, and is looked at by every program that makes it.
class WindowTour : public testing::Test
{
protected:
    WindowTour();
    /// Reads the names of the steps that were made.
    void TearDown() override;

    void look(QWidget &widget, const QString &state);
    void read(const QString &text, const QString &state) { m_eyes->read(text, state, data); }
    void lookAtPages(const QString &state);
    /// Looks at the dialog or menu that `open` opens, then does what is to be done in it, and
    /// closes it.
    void lookAtDialog(const QString &state, const std::function<void()> &open,
        const std::function<void()> &inIt = {});

    [[nodiscard]] QString said(const QString &english) const { return m_eyes->said(english); }
    [[nodiscard]] QString written(const QString &text) const { return m_eyes->written(text); }
    void makeEmptyRoster(const QString &path) const { m_eyes->makeEmptyRoster(path); }
    [[nodiscard]] ui::RosterView &roster() const { return *window.roster(); }
    /// By its English text, without mnemonic and dots.
    [[nodiscard]] QAction *action(const char *english);
    /// Writes a file into the folder, and gives its path.
    QString write(const QString &name, const QByteArray &contents);
    /// Turns to the lifter of the demo roster.
    void choose(const char *name);

private:
    std::unique_ptr<Eyes> m_eyes = makeEyes();

protected:
    PrivateFolder folder;
    ui::Theme theme{*qApp};
    SetClock clock;
    ui::MainWindow window{theme, clock.today};
    /// What is no matter of words: codes of the catalogue, paths, and what a test writes or types.
    QStringList data;
};

} // namespace tests
