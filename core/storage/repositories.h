#pragma once

#include "core/domain/edit.h"

#include <vector>

/// One repository a kind of row: its SQL and nothing else. Each offers
///     insert(row)   adds the row with its parts
///     remove(row)   takes it out with its parts; throws when it is not there any more
/// and the reads that the program needs. All throw StorageError; none opens a transaction.
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
    void insert(const Lifter &lifter);
    void remove(const Lifter &lifter);

private:
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
    void insert(const Variation &variation);
    void remove(const Variation &variation);

private:
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
    void insert(const Card &card);
    void remove(const Card &card);

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
    void insert(const LoggedSession &session);
    void remove(const LoggedSession &session);

private:
    Database &m_db;
};

} // namespace core
