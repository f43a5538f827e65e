#pragma once

#include <QLabel>

namespace ui {

/// Words that wrap, in the middle of a word where nothing else helps: whatever a coach wrote, the
/// label does not widen the window.
class WrappedLabel : public QLabel
{
    Q_OBJECT

public:
    explicit WrappedLabel(const QString &text = {});

    [[nodiscard]] QSize minimumSizeHint() const override;
    [[nodiscard]] int heightForWidth(int width) const override;

protected:
    void resizeEvent(QResizeEvent *event) override;
    void paintEvent(QPaintEvent *event) override;

private:
    [[nodiscard]] bool needsBreaks(int width) const;
    [[nodiscard]] int insets() const;
};

/// One line that ends in dots where there is no room for all of it; the tip says it in full then.
class ElidedLabel : public QLabel
{
    Q_OBJECT

public:
    explicit ElidedLabel(const QString &text = {});

    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    bool event(QEvent *event) override;
    void paintEvent(QPaintEvent *event) override;

private:
    [[nodiscard]] QString shown() const;
};

} // namespace ui
