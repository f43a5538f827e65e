#pragma once

#include "core/domain/units.h"
#include "core/plan/what_if.h"

#include <QStringList>
#include <QWidget>
#include <vector>

class QLabel;
class QTableWidget;

namespace ui {

/// A week of a comparison in words, column by column as in WhatIfView.
struct WhatIfRow
{
    QString week;
    QString current; ///< "142.5 kg (136 to 149)"
    QString changed;
    QString difference; ///< "+0.6 % (-0.2 to +1.4)"
    QString fatigue;    ///< "100 % to 112 % of usual"
    QString tonnage;
};
[[nodiscard]] std::vector<WhatIfRow> whatIfRows(
    const core::WhatIfComparison &comparison, core::Unit unit);

/// What the weeks to come may bring under the plan as it is and as it would be.
class WhatIfView : public QWidget
{
    Q_OBJECT

public:
    explicit WhatIfView(QWidget *parent = nullptr);

    void show(const core::WhatIfComparison &comparison, core::Unit unit);
    using QWidget::show;

private:
    QLabel *m_words;
    QTableWidget *m_table;
};

} // namespace ui
