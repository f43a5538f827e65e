#pragma once

#include "tests/core/storage/roster_fixture.h"

#include <algorithm>
#include <rapidcheck.h>

namespace core {

/// Draws one edit after another that fits the roster as it is.
class EditMaker
{
public:
    explicit EditMaker(RosterFile &file)
        : m_file(file)
    {
    }

    Edit next()
    {
        const Contents now = contentsOf(m_file);
        switch (now.lifters.empty() ? 0 : *rc::gen::inRange(0, 14)) {
        case 0:
            return addLifter();
        case 1:
            return changeLifter(now);
        case 2:
            return removeLifter(now);
        case 3:
            return addCard(now);
        case 4:
            return reverseDay(now);
        case 5:
            return logSession(now);
        case 6:
            return changeSession(now);
        case 7:
            return checkIn(now);
        case 8:
            return saveTemplate(now);
        case 9:
            return addBlock(now);
        case 10:
            return changeBlock(now);
        case 11:
            return waiveFinding(now);
        case 12:
            return giveDay(now);
        default:
            return changeVariation(now);
        }
    }

private:
    template <class Row> static const Row &oneOf(const std::vector<Row> &rows)
    {
        return rows[*rc::gen::inRange<size_t>(0, rows.size())];
    }
    static QString text() { return QString::fromStdString(*rc::gen::string<std::string>()); }

    Edit addLifter()
    {
        Edit edit;
        edit.lifters.after = {lifterNamed(m_file, QStringLiteral("Lifter %1").arg(++m_names))};
        return edit;
    }
    Edit changeLifter(const Contents &now)
    {
        const Lifter before = oneOf(now.lifters);
        Lifter after = before;
        after.name = QStringLiteral("Lifter %1").arg(++m_names);
        after.notes = text();
        after.bodyweightKg = *rc::gen::inRange(20, 400);
        after.archived = !before.archived;
        after.groups = *rc::gen::arbitrary<bool>()
            ? QStringList{QStringLiteral("a"), QStringLiteral("b")}
            : QStringList();
        Edit edit;
        edit.lifters = {{before}, {after}};
        return edit;
    }
    static Edit removeLifter(const Contents &now)
    {
        Edit edit;
        edit.lifters.before = {oneOf(now.lifters)};
        const LifterId gone = edit.lifters.before.front().id;
        for (const Card &card : now.cards)
            if (card.lifter == gone)
                edit.cards.before.push_back(card);
        for (const LoggedSession &session : now.sessions)
            if (session.lifter == gone)
                edit.sessions.before.push_back(session);
        for (const CheckIn &checkIn : now.checkIns)
            if (checkIn.lifter == gone)
                edit.checkIns.before.push_back(checkIn);
        for (const Block &block : now.blocks)
            if (block.lifter == gone)
                edit.blocks.before.push_back(block);
        for (const Waiver &waiver : now.waivers)
            if (waiver.key.lifter == gone)
                edit.waivers.before.push_back(waiver);
        for (const GivenDay &day : now.given)
            if (day.lifter == gone)
                edit.given.before.push_back(day);
        return edit;
    }
    Edit addCard(const Contents &now)
    {
        const LifterId lifter = oneOf(now.lifters).id;
        const QDate day = m_monday.addDays(*rc::gen::inRange(0, 3));
        const int below = int(std::count_if(now.cards.begin(), now.cards.end(),
            [&](const Card &card) { return card.lifter == lifter && card.day == day; }));
        Edit edit;
        edit.cards.after = {cardOn(m_file, lifter, day, below)};
        edit.cards.after.front().variation = oneOf(now.variations).id;
        edit.cards.after.front().note = text();
        return edit;
    }
    static Edit reverseDay(const Contents &now)
    {
        Edit edit;
        if (now.cards.empty())
            return edit;
        const Card one = oneOf(now.cards);
        for (const Card &card : now.cards)
            if (card.lifter == one.lifter && card.day == one.day)
                edit.cards.before.push_back(card);
        edit.cards.after = edit.cards.before;
        for (Card &card : edit.cards.after)
            card.position = int(edit.cards.before.size()) - 1 - card.position;
        return edit;
    }
    Edit logSession(const Contents &now)
    {
        Edit edit;
        edit.sessions.after = {
            sessionOn(m_file, oneOf(now.lifters).id, m_monday.addDays(++m_sessionDays))};
        drawSets(edit.sessions.after.front(), now);
        return edit;
    }
    static Edit changeSession(const Contents &now)
    {
        Edit edit;
        if (now.sessions.empty())
            return edit;
        edit.sessions.before = {oneOf(now.sessions)};
        edit.sessions.after = edit.sessions.before;
        drawSets(edit.sessions.after.front(), now);
        return edit;
    }
    static void drawSets(LoggedSession &session, const Contents &now)
    {
        session.sets.resize(*rc::gen::inRange<size_t>(0, 6));
        for (SetEntry &set : session.sets) {
            set = {};
            set.variation = oneOf(now.variations).id;
            set.loadKg = *rc::gen::inRange(1, 70000) / 100.0;
            set.repsDone = *rc::gen::inRange(0, 100);
            set.failed = set.repsDone == 0 || *rc::gen::arbitrary<bool>();
            if (*rc::gen::arbitrary<bool>())
                set.rpe = *rc::gen::inRange(2, 21) / 2.0;
            if (*rc::gen::arbitrary<bool>())
                set.touch = *rc::gen::inRange(1, 6);
            set.note = text();
            if (*rc::gen::arbitrary<bool>())
                set.answers = {{*rc::gen::inRange(1, 50)}, *rc::gen::inRange(0, 9)};
            if (*rc::gen::arbitrary<bool>())
                set.lead = {oneOf(now.variations).id, *rc::gen::inRange(1, 4)};
        }
    }
    static Edit changeVariation(const Contents &now)
    {
        const Variation before = oneOf(now.variations);
        Variation after = before;
        after.purpose = text();
        after.retired = !before.retired;
        after.assistance = !before.competition && *rc::gen::arbitrary<bool>();
        after.usualPercent = *rc::gen::arbitrary<bool>() ? std::optional(60.0) : std::nullopt;
        Edit edit;
        edit.variations = {{before}, {after}};
        return edit;
    }

    Edit checkIn(const Contents &now)
    {
        CheckIn checkIn;
        checkIn.id = m_file.newId<CheckIn>();
        checkIn.lifter = oneOf(now.lifters).id;
        checkIn.day = m_monday.addDays(++m_sessionDays);
        checkIn.sleep = *rc::gen::inRange(1, 6);
        checkIn.soreness[BodyArea::back] = *rc::gen::inRange(1, 6);
        if (*rc::gen::arbitrary<bool>())
            checkIn.pain = PainFlag{BodyArea::elbows, text()};
        checkIn.isPainFree = !checkIn.pain && *rc::gen::arbitrary<bool>();
        Edit edit;
        edit.checkIns.after = {checkIn};
        return edit;
    }
    Edit saveTemplate(const Contents &now)
    {
        BlockTemplate block;
        block.id = m_file.newId<BlockTemplate>();
        block.name = QStringLiteral("Strength");
        block.version = int(now.templates.size()) + 1;
        block.weeks = *rc::gen::inRange(1, 5);
        block.deloadWeeks = {block.weeks};
        block.swaps = {{QStringLiteral("off_chest_pause"), QStringLiteral("long_pause")}};
        for (int key = 1; key <= *rc::gen::inRange(0, 4); ++key)
            block.cards.push_back({key, key, 0, QStringLiteral("comp"), text(), text()});
        Edit edit;
        edit.templates.after = {block};
        return edit;
    }
    Edit addBlock(const Contents &now)
    {
        Block block;
        block.id = m_file.newId<Block>();
        block.lifter = oneOf(now.lifters).id;
        block.name = QStringLiteral("Block");
        block.start = m_monday.addDays(7 * ++m_blockWeeks);
        block.weeks = 1;
        if (!now.templates.empty())
            block.templateId = oneOf(now.templates).id;
        Edit edit;
        edit.blocks.after = {block};
        return edit;
    }
    static Edit changeBlock(const Contents &now)
    {
        Edit edit;
        if (now.blocks.empty())
            return edit;
        edit.blocks.before = {oneOf(now.blocks)};
        edit.blocks.after = edit.blocks.before;
        edit.blocks.after.front().purpose = text();
        edit.blocks.after.front().deloadWeeks = {1};
        return edit;
    }
    Edit waiveFinding(const Contents &now)
    {
        Waiver waiver;
        waiver.id = m_file.newId<Waiver>();
        waiver.key = {*rc::gen::element(CheckRule::pain, CheckRule::weeklyLifts),
            oneOf(now.lifters).id, CardId{*rc::gen::inRange(0, 3)},
            m_monday.addDays(7 * ++m_blockWeeks), Lift::bench};
        waiver.measure = *rc::gen::inRange(-500, 500) / 100.0;
        waiver.note = text();
        Edit edit;
        edit.waivers.after = {waiver};
        return edit;
    }

    Edit giveDay(const Contents &now)
    {
        GivenDay given;
        given.id = m_file.newId<GivenDay>();
        given.lifter = oneOf(now.lifters).id;
        given.day = m_monday.addDays(7 * ++m_blockWeeks);
        given.by = *rc::gen::element(GivenBy::handOut, GivenBy::reconstructed);
        given.at = toSeconds(QDateTime(m_monday, QTime(9, *rc::gen::inRange(0, 60)), Qt::UTC));
        for (int card = 0; card < *rc::gen::inRange(1, 4); ++card)
            given.cards.push_back(drawGivenCard(now));
        Edit edit;
        edit.given.after = {given};
        return edit;
    }
    static GivenCard drawGivenCard(const Contents &now)
    {
        const auto number = [] { return *rc::gen::inRange(-100000, 100000) / 700.0; };
        const auto maybe = [&]() -> std::optional<Figure> {
            if (*rc::gen::arbitrary<bool>())
                return std::nullopt;
            return Figure{number(), number(), number()};
        };
        GivenCard card{{*rc::gen::inRange(1, 50)}, oneOf(now.variations).id, text(), {}, {}};
        if (*rc::gen::arbitrary<bool>())
            card.from = {{150.0 / 1.1, 140.0 / 1.1, 160.0 / 1.1}, QDate(2026, 11, 20)};
        for (int line = 0; line < *rc::gen::inRange(0, 3); ++line) {
            GivenLine &given = card.lines.emplace_back();
            if (*rc::gen::arbitrary<bool>()) {
                given.loadKg = *rc::gen::inRange(1, 1000000) / 2204.6;
                given.plates = {{20.0, 2}, {2.5 * 0.45359237, 1}};
            }
            given.targetKg = maybe();
            given.firstReserve = maybe();
            given.lastReserve = maybe();
            if (*rc::gen::arbitrary<bool>())
                given.allMade = *rc::gen::inRange(0, 1000) / 999.0;
            if (*rc::gen::arbitrary<bool>())
                given.firstMade = *rc::gen::inRange(0, 1000) / 999.0;
            given.hardSetsAfter = *rc::gen::inRange(0, 1000) / 70.0;
            given.why = text();
            given.caution = text();
        }
        return card;
    }

    RosterFile &m_file;
    const QDate m_monday{2026, 11, 23};
    int m_names = 0;
    int m_sessionDays = 0;
    int m_blockWeeks = 0;
};

} // namespace core
