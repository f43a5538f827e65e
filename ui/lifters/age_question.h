#pragma once

#include "core/domain/lifter.h"

#include <QWidget>

class QLineEdit;

namespace ui {

class FieldNote;
class OpenRoster;

/// Asks once how old a lifter is, where nobody has said: an adult, or the year of birth. Stands
/// still until it is answered, since it is no reason to stop the work; until then the program
/// writes no maximal work for the lifter (core/safety/day_limits.h).
class AgeQuestion final : public QWidget
{
    Q_OBJECT

public:
    explicit AgeQuestion(OpenRoster &roster, QWidget *parent = nullptr);

    /// Asks about the lifter; hidden where the age is known.
    void askAbout(const core::Lifter &lifter);

protected:
    void paintEvent(QPaintEvent *event) override;

private:
    void sayAdult();
    void takeYear();
    void ask(const core::Lifter &lifter);

    OpenRoster &m_roster;
    core::LifterId m_lifter;
    FieldNote *m_words; ///< the question, or what is wrong with the answer
    QLineEdit *m_year;
};

} // namespace ui
