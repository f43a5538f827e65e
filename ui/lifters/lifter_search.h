#pragma once

#include "ui/lifters/lifter_query.h"

#include <QWidget>

class QComboBox;
class QLineEdit;

namespace ui {

/// Above the lifter list: the words, the group and the touch style that lifters are found by.
class LifterSearch final : public QWidget
{
    Q_OBJECT

public:
    explicit LifterSearch(QWidget *parent = nullptr);

    [[nodiscard]] LifterQuery query() const;
    void clear();
    /// A group that has gone is looked for no longer.
    void setGroups(const QStringList &groups);
    /// False while there is nobody to look for.
    void setUsable(bool usable);
    void focusWords();

Q_SIGNALS:
    void queryChanged(const ui::LifterQuery &query);
    /// Down or Enter: on to what was found.
    void left();

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;
    void changeEvent(QEvent *event) override;

private:
    void showMarks();

    QLineEdit *m_words;
    QComboBox *m_groups;
    QComboBox *m_styles;
};

} // namespace ui
