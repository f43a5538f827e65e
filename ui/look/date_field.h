#pragma once

#include <QDate>
#include <QWidget>

class QLineEdit;
class QToolButton;

namespace ui {

class FieldNote;

/// The day of a form, the one field for all of them: typed as it is shown, by the numbers as the
/// country writes them or as 2026-03-31, or picked from a calendar. What is no date stays as it was
/// typed, and the note below says how to write one.
class DateField final : public QWidget
{
    Q_OBJECT

public:
    explicit DateField(QDate date, const QString &accessibleName, QWidget *parent = nullptr);

    /// As typed; the last sound one where that is none.
    [[nodiscard]] QDate date() const { return m_date; }
    void setDate(QDate date);
    void setMaximumDate(QDate latest);
    /// What is wrong with what is typed, and how to write it; empty when date() is what is typed.
    [[nodiscard]] QString problem() const;
    [[nodiscard]] bool isSound() const { return problem().isEmpty(); }
    [[nodiscard]] QLineEdit &field() { return *m_field; }

Q_SIGNALS:
    /// Typed or picked; it may be unsound now.
    void edited();

private:
    void take(const QString &text);
    void openCalendar();

    QDate m_date;
    QDate m_latest;
    QLineEdit *m_field;
    QToolButton *m_pick;
    FieldNote *m_note;
};

/// As a form shows it: "7 Dec 2026", in the language of the program.
[[nodiscard]] QString shownDate(QDate date);
/// Invalid where the text is none.
[[nodiscard]] QDate dateTyped(const QString &text);

} // namespace ui
