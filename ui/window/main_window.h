#pragma once

#include <QMainWindow>
#include <functional>
#include <memory>

class QActionGroup;
class QStackedWidget;

namespace core {
class RosterStore;
}

namespace ui {

class LifterListPanel;
class MessageBar;
class RosterView;
class StartPage;
class Theme;
class Today;

/// The window: menus, a message bar, and either the start page or one open roster. It only
/// assembles.
class MainWindow final : public QMainWindow
{
    Q_OBJECT

public:
    MainWindow(Theme &theme, Today &today, QWidget *parent = nullptr);
    ~MainWindow() override;

    /// Opens a roster in place of the present one. When that fails the message bar says why, and
    /// the window keeps what it had. A backup stays as it is: a copy of it is opened.
    bool openFile(const QString &path);
    /// Makes a new roster file and opens it; the same on failure.
    bool createFile(const QString &path);
    /// Back to the start page. False where the coach wants to finish first what is half typed.
    bool closeFile();

    /// Null on the start page.
    [[nodiscard]] RosterView *roster() const { return m_roster; }
    /// Of the open roster; empty on the start page.
    [[nodiscard]] const QString &path() const { return m_path; }

protected:
    void closeEvent(QCloseEvent *event) override;
    /// Of the application: in a text field where there is nothing to undo, the step is undone.
    bool eventFilter(QObject *watched, QEvent *event) override;
    void dragEnterEvent(QDragEnterEvent *event) override;
    void dropEvent(QDropEvent *event) override;

private:
    void buildFileMenu();
    void buildEditMenu();
    void buildRosterMenu();
    void buildViewMenu();
    void buildHelpMenu();
    QAction *addRosterAction(QMenu *menu, const QString &text, const QKeySequence &keys,
        const std::function<void(RosterView &)> &act);
    void fillRecentMenu();

    void askForNew();
    void askForOpen();
    void askForBackup();
    bool openCopyOfBackup(const QString &path);
    /// Shows the roster file that `make` returns, or says why it failed.
    template <class Make> bool take(Make make);
    void showRoster(std::unique_ptr<core::RosterStore> store, const QString &path);
    /// Asks about what is half typed; true when nothing is, or it may go.
    bool mayClose();
    void dropRoster();
    void showSteps();
    void refreshState();

    Theme &m_theme;
    Today &m_today;
    QAction *m_undo = nullptr;
    QAction *m_redo = nullptr;
    QActionGroup *m_rosterActions; ///< those that need an open roster
    QMenu *m_recent = nullptr;
    MessageBar *m_message;
    QStackedWidget *m_stack;
    StartPage *m_start;
    RosterView *m_roster = nullptr;
    QString m_path; ///< of the open roster; empty without one
};

} // namespace ui
