#pragma once

#include "core/domain/ids.h"

#include <QLineEdit>
#include <functional>
#include <utility>
#include <vector>

class QStringListModel;

namespace ui {

/// A field that finds lifters by parts of their names, whatever accents and case, and offers them
/// below. Enter takes the one chosen, or the first.
class LifterField : public QLineEdit
{
    Q_OBJECT

public:
    using Names = std::vector<std::pair<core::LifterId, QString>>;

    /// @param offered  whom to look among, asked as the coach types
    explicit LifterField(std::function<Names()> offered, QWidget *parent = nullptr);

Q_SIGNALS:
    void taken(core::LifterId lifter);
    /// Nobody is called that.
    void notFound(const QString &typed);
    /// Escape in the empty field.
    void left();

protected:
    void keyPressEvent(QKeyEvent *event) override;

private:
    [[nodiscard]] Names found(const QString &typed) const;
    void take(const QString &typed);

    std::function<Names()> m_offered;
    QStringListModel *m_names;
};

} // namespace ui
