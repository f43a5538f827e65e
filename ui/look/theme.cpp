#include "ui/look/theme.h"

#include "ui/look/desktop_scheme.h"
#include "ui/look/elided_tips.h"
#include "ui/look/look_style.h"
#include "ui/look/paste_guard.h"

#include <QApplication>
#include <QSettings>

namespace ui {

namespace {

const QString kKey = QStringLiteral("look/scheme");

QString settingsWord(SchemeChoice choice)
{
    return choice == SchemeChoice::light ? QStringLiteral("light")
        : choice == SchemeChoice::dark   ? QStringLiteral("dark")
                                         : QStringLiteral("system");
}

SchemeChoice choiceKept()
{
    const QString word = QSettings().value(kKey).toString();
    for (const SchemeChoice choice : {SchemeChoice::light, SchemeChoice::dark})
        if (word == settingsWord(choice))
            return choice;
    return SchemeChoice::system;
}

} // namespace

QPalette paletteFor(Scheme scheme)
{
    const Colours &c = colours(scheme);
    QPalette p;
    p.setColor(QPalette::Window, c.window);
    p.setColor(QPalette::WindowText, c.text);
    p.setColor(QPalette::Base, c.surface);
    p.setColor(QPalette::AlternateBase, c.sunken);
    p.setColor(QPalette::Text, c.text);
    p.setColor(QPalette::PlaceholderText, c.mutedText);
    p.setColor(QPalette::Button, c.surface);
    p.setColor(QPalette::ButtonText, c.text);
    p.setColor(QPalette::BrightText, c.dangerText);
    p.setColor(QPalette::ToolTipBase, c.surface);
    p.setColor(QPalette::ToolTipText, c.text);
    p.setColor(QPalette::Highlight, c.chosen);
    p.setColor(QPalette::HighlightedText, c.onChosen);
    p.setColor(QPalette::Link, c.accent);
    p.setColor(QPalette::LinkVisited, c.accent);
    p.setColor(QPalette::Light, c.surface.lighter(110));
    p.setColor(QPalette::Midlight, c.sunken);
    p.setColor(QPalette::Mid, c.line);
    p.setColor(QPalette::Dark, c.controlBorder);
    p.setColor(QPalette::Shadow, scheme == Scheme::dark ? QColor(Qt::black) : c.controlBorder);
    // WCAG asks no contrast of disabled controls; the muted text keeps them readable all the same.
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        p.setColor(QPalette::Disabled, role, c.controlBorder);
    p.setColor(QPalette::Disabled, QPalette::Base, c.sunken);
    p.setColor(QPalette::Disabled, QPalette::Button, c.sunken);
    return p;
}

Theme::Theme(QApplication &app)
    : m_app(app)
    , m_startScheme(schemeOf(app.palette()))
    , m_choice(choiceKept())
{
    app.setStyle(new LookStyle); // the application owns its style
    new ElidedTips(this);
    new PasteGuard(this);
    watchDesktopScheme(this, SLOT(desktopChanged()));
    apply();
}

void Theme::choose(SchemeChoice choice)
{
    m_choice = choice;
    QSettings().setValue(kKey, settingsWord(choice));
    apply();
}

void Theme::apply()
{
    Scheme scheme = m_choice == SchemeChoice::dark ? Scheme::dark : Scheme::light;
    if (m_choice == SchemeChoice::system)
        scheme = desktopScheme().value_or(m_startScheme);
    m_app.setPalette(paletteFor(scheme));
}

void Theme::desktopChanged()
{
    if (m_choice == SchemeChoice::system)
        apply();
}

} // namespace ui
