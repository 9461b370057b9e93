// Receipts: what the book was when somebody else saw it.

#include "store.hpp"
#include "store_error.hpp"

#include <SQLiteCpp/Statement.h>

namespace cotter::db {

namespace {

std::string hash_at(SQLite::Database& database, const std::string& device, std::int64_t seq)
{
    SQLite::Statement query{database, "SELECT hash FROM record WHERE device = ? AND seq = ?"};
    query.bind(1, device);
    query.bind(2, seq);
    return query.executeStep() ? query.getColumn(0).getString() : "";
}

} // namespace

records::Receipt Store::receipt(rules::Instant at) const
{
    if (!key_)
        throw StoreError{"this book has no device key beside it; a receipt is signed with it"};
    return make_receipt(*key_, state().head, at);
}

bool Store::has_records_of(const std::string& device) const { return table_.head_of(device).seq > 0; }

std::string Store::sign(const std::string& text) const
{
    if (!key_)
        throw StoreError{"this book has no device key beside it; what is handed out is signed with it"};
    return key_->sign(text);
}

std::string Store::compare(const records::Receipt& receipt) const
{
    const std::string first = hash_at(*database_, receipt.device, 1);
    const auto device = first.empty() ? std::nullopt : find(first);
    if (!device)
        return "the receipt is of a device that this book does not know";
    if (!is_signed_by(device->entry.body.value("public_key", ""), receipt))
        return "the receipt is not signed by its device";
    const std::string now = hash_at(*database_, receipt.device, receipt.head.seq);
    if (now.empty())
        return "the end is cut off: the book had " + std::to_string(receipt.head.seq) +
               " records of this device, now " + std::to_string(table_.head_of(receipt.device).seq);
    return now == receipt.head.hash ? ""
                                    : "the chain was written anew: record " + std::to_string(receipt.head.seq) +
                                          " is another than the receipt says";
}

} // namespace cotter::db
