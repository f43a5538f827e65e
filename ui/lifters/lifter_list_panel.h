#pragma once

#include "core/domain/ids.h"

#include <QWidget>

class QCheckBox;
class QLabel;
class QListView;
class QPushButton;
class QStackedWidget;

namespace ui {

class Estimates;
class LifterListFilter;
class LifterListModel;
class LifterSearch;
class OpenRoster;
class Selection;

/// The roster on the left: find, filter, choose, add, edit, archive and restore lifters.
class LifterListPanel final : public QWidget
{
    Q_OBJECT

public:
    LifterListPanel(
        OpenRoster &roster, Estimates &estimates, Selection &selection, QWidget *parent = nullptr);

    void focusSearch();
    /// Goes `step` rows down the list (up when negative) and stays at its ends.
    void stepLifter(int step);
    void addLifter();
    /// The lifter chosen; nothing where there is none.
    void editLifter();
    /// Archives the lifter chosen, or restores an archived one.
    void toggleArchived();

Q_SIGNALS:
    /// What was done to a lifter who may be out of sight now.
    void told(const QString &words);

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void buildControls();
    void connectControls();
    void followLifters();
    void refreshFooter();
    /// Runs a change of the filter without taking another lifter for chosen.
    template <class Change> void narrow(Change change);
    void enterList();
    void chooseCurrent();
    void showChosen();
    void chooseFirstIfNone();
    void contextMenu(const QPoint &at);

    OpenRoster &m_roster;
    Selection &m_selection;
    LifterListModel *m_model;
    LifterListFilter *m_filter;

    LifterSearch *m_search = nullptr;
    QCheckBox *m_showArchived = nullptr;
    QStackedWidget *m_stack = nullptr;
    QListView *m_list = nullptr;
    QWidget *m_nothing = nullptr;
    QLabel *m_nothingWords = nullptr;
    QPushButton *m_clear = nullptr;
    QPushButton *m_add = nullptr;
    QPushButton *m_edit = nullptr;
    QPushButton *m_archive = nullptr;
    bool m_narrowing = false; ///< the filter moves the current row, not the coach
};

} // namespace ui
