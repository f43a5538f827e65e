#pragma once

#include "ui/look/words_label.h"

namespace ui {

/// A line under a field: what is wrong with it and how to put it right, or a caution. Takes no room
/// while it is empty.
class FieldNote final : public WrappedLabel
{
    Q_OBJECT

public:
    enum class Kind { problem, caution, explanation };

    explicit FieldNote(Kind kind, const QString &text = {});

    void setKind(Kind kind);
    /// Shows the text; hides the note when it is empty.
    void say(const QString &text);

protected:
    void changeEvent(QEvent *event) override;

private:
    void recolour();

    Kind m_kind;
};

/// A note that explains.
[[nodiscard]] FieldNote *explain(const QString &words);

} // namespace ui
