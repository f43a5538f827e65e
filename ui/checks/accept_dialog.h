#pragma once

#include "core/advice/open_stops.h"

#include <QDialog>

class QLineEdit;
class QPushButton;

namespace ui {

class OpenRoster;

/// Findings of the plan checks, for the coach to go back and mend the plan, or to accept with a
/// note on why it is right here.
class AcceptDialog : public QDialog
{
    Q_OBJECT

public:
    /// @param findings  in words
    /// @param needsNote  accepting takes words
    AcceptDialog(const QStringList &findings, bool needsNote, QWidget *parent = nullptr);
    /// What stands between a plan and the lifters' hands.
    explicit AcceptDialog(const std::vector<core::OpenStop> &stops, QWidget *parent = nullptr);

    [[nodiscard]] QString note() const;

private:
    QLineEdit *m_note;
    QPushButton *m_accept = nullptr;
};

/// Keeps the coach's note on the stops, as one step; the return value is that of
/// OpenRoster::perform().
bool acceptStops(OpenRoster &roster, const std::vector<core::OpenStop> &stops, const QString &note);

} // namespace ui
