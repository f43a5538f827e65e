#pragma once

#include <QWidget>

class QLabel;

namespace ui {

class AgeQuestion;
class Estimates;
class FieldNote;
class OpenRoster;
class Selection;

/// The strip above the pages: who is shown, touch style, bench estimate with its interval, meet and
/// bodyweight; below it what has to be asked about the lifter.
class LifterHeader final : public QWidget
{
    Q_OBJECT

public:
    LifterHeader(
        OpenRoster &roster, Estimates &estimates, Selection &selection, QWidget *parent = nullptr);

protected:
    void changeEvent(QEvent *event) override;

private:
    /// A value with its caption above it and a remark below.
    struct Fact
    {
        QWidget *box = nullptr;
        QLabel *value = nullptr;
        FieldNote *remark = nullptr;
    };
    [[nodiscard]] Fact addFact(QLayout &row, const QString &caption);
    void refresh();

    OpenRoster &m_roster;
    Estimates &m_estimates;
    Selection &m_selection;
    QLabel *m_name = nullptr;
    QLabel *m_mark = nullptr;
    QLabel *m_touch = nullptr;
    Fact m_bench;
    Fact m_meet;
    Fact m_bodyweight;
    AgeQuestion *m_age = nullptr;
};

} // namespace ui
