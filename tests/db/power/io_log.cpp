#include "io_log.hpp"

#include <sqlite3.h>

#include <utility>

namespace cotter::tests {

namespace {

sqlite3_vfs* under() // the system's
{
    static sqlite3_vfs* const vfs = sqlite3_vfs_find(nullptr);
    return vfs;
}

struct File {
    sqlite3_file base;
    std::string* path;
    sqlite3_file* real; // lies behind this struct
};

File& file_of(sqlite3_file* file) { return *reinterpret_cast<File*>(file); }
sqlite3_file* real_of(sqlite3_file* file) { return file_of(file).real; }
IoLog& log() { return IoLog::install(); }

int close_file(sqlite3_file* file)
{
    const int result = real_of(file)->pMethods->xClose(real_of(file));
    delete file_of(file).path;
    return result;
}

int read_file(sqlite3_file* file, void* out, int size, sqlite3_int64 offset)
{
    if (log().fails())
        return SQLITE_IOERR_READ;
    return real_of(file)->pMethods->xRead(real_of(file), out, size, offset);
}

int write_file(sqlite3_file* file, const void* bytes, int size, sqlite3_int64 offset)
{
    if (log().fails())
        return SQLITE_IOERR_WRITE;
    log().note({Io::What::write, *file_of(file).path, offset,
                std::string{static_cast<const char*>(bytes), static_cast<std::size_t>(size)}});
    return real_of(file)->pMethods->xWrite(real_of(file), bytes, size, offset);
}

int truncate_file(sqlite3_file* file, sqlite3_int64 size)
{
    if (log().fails())
        return SQLITE_IOERR_TRUNCATE;
    log().note({Io::What::truncate, *file_of(file).path, size, ""});
    return real_of(file)->pMethods->xTruncate(real_of(file), size);
}

int sync_file(sqlite3_file* file, int flags)
{
    if (log().fails())
        return SQLITE_IOERR_FSYNC;
    if (!log().forgets_syncs)
        log().note({Io::What::sync, *file_of(file).path, 0, ""});
    return real_of(file)->pMethods->xSync(real_of(file), flags);
}

int size_of_file(sqlite3_file* file, sqlite3_int64* size)
{
    return real_of(file)->pMethods->xFileSize(real_of(file), size);
}
int lock(sqlite3_file* file, int level) { return real_of(file)->pMethods->xLock(real_of(file), level); }
int unlock(sqlite3_file* file, int level) { return real_of(file)->pMethods->xUnlock(real_of(file), level); }
int is_reserved(sqlite3_file* file, int* out)
{
    return real_of(file)->pMethods->xCheckReservedLock(real_of(file), out);
}
int control(sqlite3_file* file, int op, void* arg)
{
    return real_of(file)->pMethods->xFileControl(real_of(file), op, arg);
}
int sector_size(sqlite3_file* file) { return real_of(file)->pMethods->xSectorSize(real_of(file)); }
int traits(sqlite3_file* file) { return real_of(file)->pMethods->xDeviceCharacteristics(real_of(file)); }

// Version 1: no shared memory and no mapping; a store is held exclusively and needs neither.
const sqlite3_io_methods methods{1,       close_file, read_file,   write_file, truncate_file, sync_file, size_of_file,
                                 lock,    unlock,     is_reserved, control,    sector_size,   traits,    nullptr,
                                 nullptr, nullptr,    nullptr,     nullptr,    nullptr};

int open_file(sqlite3_vfs*, const char* name, sqlite3_file* file, int flags, int* out_flags)
{
    file->pMethods = nullptr;
    if (log().fails())
        return SQLITE_CANTOPEN;
    File& opened = file_of(file);
    opened.real = reinterpret_cast<sqlite3_file*>(&opened + 1);
    const int result = under()->xOpen(under(), name, opened.real, flags, out_flags);
    if (!opened.real->pMethods)
        return result;
    opened.path = new std::string{name ? name : ""};
    opened.base.pMethods = &methods;
    return result;
}

int remove_file(sqlite3_vfs*, const char* name, int sync_folder)
{
    if (log().fails())
        return SQLITE_IOERR_DELETE;
    log().note({Io::What::remove, name, 0, ""});
    return under()->xDelete(under(), name, sync_folder);
}

void install_vfs()
{
    static sqlite3_vfs vfs = *under();
    vfs.zName = "noting";
    vfs.szOsFile = static_cast<int>(sizeof(File)) + under()->szOsFile;
    vfs.xOpen = open_file;
    vfs.xDelete = remove_file;
    sqlite3_vfs_register(&vfs, 1);
}

} // namespace

IoLog& IoLog::install()
{
    static IoLog log;
    static const bool installed = (under(), install_vfs(), true);
    (void)installed;
    return log;
}

std::vector<Io> IoLog::take() { return std::exchange(noted_, {}); }

void IoLog::acknowledge(std::int64_t seq) { noted_.push_back({Io::What::acknowledged, "", seq, ""}); }

void IoLog::note(Io io)
{
    if (notes)
        noted_.push_back(std::move(io));
}

void IoLog::fail_at(long n, bool for_good)
{
    left_ = n;
    for_good_ = for_good;
    failed_ = false;
}

bool IoLog::fails()
{
    if (left_ < 0)
        return false;
    if (left_-- > 0)
        return false;
    left_ = for_good_ ? 0 : -1;
    failed_ = true;
    return true;
}

} // namespace cotter::tests
