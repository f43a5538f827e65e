#pragma once

#include "ui/lifters/lifter_draft.h"

#include <QWidget>

class QLabel;
class QLineEdit;
class QTableWidget;

namespace ui {

class FieldNote;

/// Bar, collars and plates at hand, as typed.
class GearEditor final : public QWidget
{
    Q_OBJECT

public:
    explicit GearEditor(QWidget *parent = nullptr);

    void setDraft(const GearDraft &draft, core::Unit unit);
    [[nodiscard]] GearDraft draft() const;

    /// Says the mistakes beside the fields; empty texts clear them.
    void setProblems(const QString &bar, const QString &collars, const QString &plates);

Q_SIGNALS:
    void edited();
    /// The coach asks for the usual plates of a unit.
    void usualAskedFor(core::Unit unit);

private:
    void appendPlate(const PlateDraft &plate);
    void addPlate();
    void removePlate();

    QLineEdit *m_bar = nullptr;
    QLineEdit *m_collars = nullptr;
    QLabel *m_barUnit = nullptr;
    QLabel *m_collarsUnit = nullptr;
    QTableWidget *m_plates = nullptr;
    FieldNote *m_barProblem = nullptr;
    FieldNote *m_collarsProblem = nullptr;
    FieldNote *m_platesProblem = nullptr;
};

} // namespace ui
