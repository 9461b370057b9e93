#pragma once

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include <map>
#include <string>

namespace cotter::db {

// Statements are compiled once and kept; each use binds anew and lets go of its rows at its end.
class Statements {
public:
    class Use {
    public:
        explicit Use(SQLite::Statement& statement) : statement_{statement} {}
        Use(const Use&) = delete;
        Use& operator=(const Use&) = delete;
        ~Use()
        {
            statement_.tryReset(); // an error was thrown where it arose
            statement_.clearBindings();
        }
        SQLite::Statement* operator->() const { return &statement_; }
        SQLite::Statement& operator*() const { return statement_; }

    private:
        SQLite::Statement& statement_;
    };

    explicit Statements(SQLite::Database& database) : database_{database} {}

    // One use of the same text at a time.
    Use use(const std::string& sql) const
    {
        auto found = kept_.find(sql);
        if (found == kept_.end())
            found = kept_.try_emplace(sql, database_, sql).first;
        return Use{found->second};
    }

private:
    SQLite::Database& database_;
    mutable std::map<std::string, SQLite::Statement> kept_;
};

} // namespace cotter::db
