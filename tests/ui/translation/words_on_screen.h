#pragma once

#include "tests/support/roster_fixture.h"
#include "tests/support/set_clock.h"
#include "tests/ui/translation/visible_text.h"
#include "ui/look/theme.h"
#include "ui/window/main_window.h"

#include <QApplication>
#include <QSet>
#include <functional>
#include <gmock/gmock.h>

namespace tests {

/// The window on a foreign roster, in a foreign locale, under a translation of all its words.
class WordsOnScreen : public testing::Test
{
protected:
    WordsOnScreen();
    /// Looks at the names of the steps that were made.
    void TearDown() override;

    /// Fails for each text of the widget that no translator can reach.
    void look(QWidget &widget, const QString &state);
    void expectNoLatin(const std::vector<VisibleText> &visible, const QString &state);
    void lookAtPages(const QString &state);
    /// Looks at the dialog or menu that `open` opens, then does what is to be done in it, and
    /// closes it.
    void lookAtDialog(const QString &state, const std::function<void()> &open,
        const std::function<void()> &inIt = {});

    [[nodiscard]] ui::RosterView &roster() const { return *window.roster(); }
    /// By its English text, without mnemonic and dots.
    [[nodiscard]] QAction *action(const char *english);
    /// Writes a file into the folder, and gives its path.
    QString write(const QString &name, const QByteArray &contents);
    /// Turns to the lifter of the demo roster.
    void choose(const char *name);

    PrivateFolder folder;
    ui::Theme theme{*qApp};
    SetClock clock;
    ui::MainWindow window{theme, clock.today};
    /// What is no matter of words: codes of the catalogue, paths, and what a test writes or types.
    QStringList data;

private:
    QSet<QString> m_said;
};

} // namespace tests
