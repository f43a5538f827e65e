#pragma once

#include "ui/review/strength_series.h"

#include <QWidget>

class QVBoxLayout;

namespace ui {

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
    void addRow(const QPixmap &swatch, const QString &words);

    std::vector<ReadingKind> m_kinds;
    core::Lift m_lift = core::Lift::bench;
    Knowledge m_knowledge = Knowledge::now;
    QVBoxLayout *m_rows;
};

} // namespace ui
