#pragma once

#include "core/domain/lifter.h"

#include <QPushButton>
#include <vector>

class QLineEdit;
class QListWidget;
class QListWidgetItem;

namespace ui {

class FieldNote;

/// Chooses the lifters to compare with, from a list with a search that drops down.
class CompareButton final : public QPushButton
{
    Q_OBJECT

public:
    /// @param most  who may be chosen at once
    explicit CompareButton(int most, QWidget *parent = nullptr);

    /// Archived lifters are left out. Who is chosen stays so.
    void setLifters(const std::vector<core::Lifter> &lifters);
    [[nodiscard]] const std::vector<core::LifterId> &chosen() const { return m_chosen; }

Q_SIGNALS:
    void chosenChanged();

private:
    void narrow(const QString &query);
    void take(QListWidgetItem *item);
    void showState();
    [[nodiscard]] QString fullWords() const;

    int m_most;
    std::vector<core::LifterId> m_chosen; ///< in the order chosen
    QLineEdit *m_query;
    QListWidget *m_list;
    FieldNote *m_full; ///< why one more was refused
};

} // namespace ui
