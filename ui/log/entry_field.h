#pragma once

#include <QLineEdit>

namespace ui {

/// The field that sets are typed into. The keys that belong to the list of sets go there while the
/// field stays in focus, so that a session is logged without leaving it.
class EntryField : public QLineEdit
{
    Q_OBJECT

public:
    explicit EntryField(QWidget *parent = nullptr);

Q_SIGNALS:
    void stepped(int lines);
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
