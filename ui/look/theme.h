#pragma once

#include "ui/look/colours.h"

#include <QObject>
#include <QPalette>

class QApplication;

namespace ui {

/// What the coach chose in the View menu.
enum class SchemeChoice { system, light, dark };

[[nodiscard]] QPalette paletteFor(Scheme scheme);

/// Puts our look on the application: the style, the palette of the scheme chosen, and the next one
/// when the desktop turns light or dark. The choice is kept in QSettings.
class Theme : public QObject
{
    Q_OBJECT

public:
    /// Applies the choice kept from last time; the desktop's own setting when there is none.
    explicit Theme(QApplication &app);

    [[nodiscard]] SchemeChoice choice() const { return m_choice; }
    void choose(SchemeChoice choice);

private:
    void apply();

    QApplication &m_app;
    Scheme m_startScheme; ///< as the platform's palette was before ours
    SchemeChoice m_choice = SchemeChoice::system;

private Q_SLOTS:
    void desktopChanged();
};

} // namespace ui
