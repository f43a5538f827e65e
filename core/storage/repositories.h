#pragma once

#include "core/domain/edit.h"

#include <optional>
#include <vector>

/// One repository a kind of row: its SQL and nothing else. Each offers
///     find(id)       the row as it is in the file
///     insert(row)    adds the row with its parts
///     remove(id)     takes it out with its parts
///     describe(row)  names it in an error: "Card 2 of Ann on 2024-05-01"
/// and the reads that the program needs. Rows that others refer to are updated in place:
///     release(id)    frees what is unique about it, so that two rows may swap names
///     update(row)    writes a released row anew
/// All throw StorageError; none opens a transaction.
namespace core {

class Database;

class LifterRepository
{
public:
    explicit LifterRepository(Database &db)
        : m_db(db)
    {
    }
    [[nodiscard]] std::vector<Lifter> all(); ///< by name
    [[nodiscard]] std::optional<Lifter> find(LifterId id);
    void insert(const Lifter &lifter);
    void remove(LifterId id);
    void release(LifterId id);
    void update(const Lifter &lifter);
    [[nodiscard]] QString describe(const Lifter &lifter);

private:
    /// All, or the one with `id` where that is valid; in no order.
    [[nodiscard]] std::vector<Lifter> read(LifterId id = {});
    void insertParts(const Lifter &lifter);
    void refuseTakenName(const Lifter &lifter);

    Database &m_db;
};

class VariationRepository
{
public:
    explicit VariationRepository(Database &db)
        : m_db(db)
    {
    }
    [[nodiscard]] std::vector<Variation> all(); ///< by id, which is catalogue order
    [[nodiscard]] std::optional<Variation> find(VariationId id);
    void insert(const Variation &variation);
    void remove(VariationId id);
    void release(VariationId id);
    void update(const Variation &variation);
    [[nodiscard]] QString describe(const Variation &variation);

private:
    void refuseTaken(const Variation &variation);

    Database &m_db;
};

class CardRepository
{
public:
    explicit CardRepository(Database &db)
        : m_db(db)
    {
    }
    [[nodiscard]] std::vector<Card> between(LifterId lifter, QDate from, QDate to);
    [[nodiscard]] std::optional<Card> find(CardId id);
    void insert(const Card &card);
    void remove(CardId id);
    [[nodiscard]] QString describe(const Card &card);

private:
    Database &m_db;
};

class SessionRepository
{
public:
    explicit SessionRepository(Database &db)
        : m_db(db)
    {
    }
    [[nodiscard]] std::vector<LoggedSession> of(LifterId lifter);
    [[nodiscard]] std::vector<LoggedSession> all();
    [[nodiscard]] std::optional<LoggedSession> find(SessionId id);
    void insert(const LoggedSession &session);
    void remove(SessionId id);
    [[nodiscard]] QString describe(const LoggedSession &session);

private:
    Database &m_db;
};

} // namespace core
