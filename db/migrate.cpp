#include "migrate.hpp"

#include <SQLiteCpp/Transaction.h>

namespace cotter::db {

namespace {

int number_of(const std::string& name) // "0003_facts"
{
    return std::stoi(name.substr(0, name.find('_')));
}

} // namespace

int newest_version() { return number_of(embedded_migrations().back().first); }

int version_of(SQLite::Database& database) { return database.execAndGet("PRAGMA user_version").getInt(); }

void migrate(SQLite::Database& database)
{
    for (const auto& [name, sql] : embedded_migrations()) {
        const int version = number_of(name);
        if (version_of(database) >= version)
            continue;
        SQLite::Transaction write{database, SQLite::TransactionBehavior::IMMEDIATE};
        database.exec(sql);
        database.exec("PRAGMA user_version = " + std::to_string(version));
        write.commit();
    }
}

} // namespace cotter::db
