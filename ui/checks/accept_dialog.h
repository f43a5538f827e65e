#pragma once

#include "core/advice/open_stops.h"

#include <QDialog>
#include <map>
#include <vector>

class QCheckBox;
class QLineEdit;
class QPushButton;

namespace ui {

class OpenRoster;

/// Findings of the plan checks, for the coach to go back and mend the plan, or to accept with a
/// note on why it is right here. Of several lifters each has a note of their own.
class AcceptDialog : public QDialog
{
    Q_OBJECT

public:
    /// @param findings  in words
    /// @param needsNote  accepting takes words
    AcceptDialog(const QStringList &findings, bool needsNote, QWidget *parent = nullptr);
    /// What stands between plans and the lifters' hands.
    explicit AcceptDialog(const std::vector<core::OpenStop> &stops, QWidget *parent = nullptr);

    /// Of the first or only lifter.
    [[nodiscard]] QString note() const;
    /// By lifter; of whom the coach has written none, nothing is accepted.
    [[nodiscard]] std::map<core::LifterId, QString> notes() const;

private:
    /// What one note is about.
    struct Group
    {
        core::LifterId lifter;
        QString name;
        QStringList findings; ///< in words
    };
    static std::vector<Group> byLifter(const std::vector<core::OpenStop> &stops);
    AcceptDialog(const std::vector<Group> &groups, bool needsNote, QWidget *parent);
    void refresh();
    [[nodiscard]] QString noteIn(const QLineEdit &field) const;

    bool m_needsNote;
    std::vector<std::pair<core::LifterId, QLineEdit *>> m_notes; ///< at least one
    QCheckBox *m_sameForAll;
    QPushButton *m_accept = nullptr;
};

/// Keeps the coach's notes on the stops of their lifters, as one step; the return value is that of
/// OpenRoster::perform().
bool acceptStops(OpenRoster &roster, const std::vector<core::OpenStop> &stops,
    const std::map<core::LifterId, QString> &notes);

} // namespace ui
