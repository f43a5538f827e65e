#pragma once

#include "ui/review/strength_series.h"

#include <QPixmap>
#include <QWidget>
#include <functional>

class QVBoxLayout;

namespace ui {

using Paint = std::function<void(QPainter &, const QRectF &)>;

/// A small picture for a legend.
[[nodiscard]] QPixmap swatch(const QSize &size, double scale, const Paint &paint);

/// What the shapes and colours of the review's charts mean, in words. Only what is there to be
/// seen.
class ReviewLegend : public QWidget
{
    Q_OBJECT

public:
    explicit ReviewLegend(QWidget *parent = nullptr);

    void setContent(const StrengthSeries &series, core::Lift lift, Knowledge knowledge);

protected:
    void changeEvent(QEvent *event) override;

private:
    void rebuild();
    void addRow(const Paint &paint, const QString &words);

    std::vector<ReadingKind> m_kinds;
    core::Lift m_lift = core::Lift::bench;
    Knowledge m_knowledge = Knowledge::now;
    QVBoxLayout *m_rows;
};

} // namespace ui
