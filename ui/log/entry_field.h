#pragma once

#include "ui/look/page_help.h"

#include <QLineEdit>
#include <optional>

namespace ui {

/// What a key means in the field, besides writing.
enum class EntryAct {
    previousSet,
    nextSet,
    previousLifter,
    nextLifter,
    extraSet,
    removeSet,
    giveUp
};

/// @param isBlank  nothing is written: then more keys are the list's
[[nodiscard]] std::optional<EntryAct> entryAct(const QKeyEvent &key, bool isBlank);

/// All of them, but those that go to other lifters: a page that shows several says so.
[[nodiscard]] HelpRows entryKeys();

/// The field that sets are typed into. The keys that belong to the list of sets go there while the
/// field stays in focus, so that a session is logged without leaving it.
class EntryField : public QLineEdit
{
    Q_OBJECT

public:
    explicit EntryField(QWidget *parent = nullptr);

Q_SIGNALS:
    void stepped(int lines);
    /// Left or Right in an empty field.
    void sideways(int steps);
    void extraWanted();
    /// Delete in an empty field.
    void deleteWanted();
    /// Escape; the field is empty now.
    void givenUp();

protected:
    bool event(QEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;
};

} // namespace ui
