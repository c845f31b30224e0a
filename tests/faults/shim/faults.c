/*
 * Makes file operations go wrong, under a real program that knows nothing of it: loaded by LD_PRELOAD, it
 * stands between the program and the C library and counts every operation on a path below one folder.
 *
 *   LEADWRIGHT_FAULTS_BELOW   the folder
 *   LEADWRIGHT_FAULTS_LOG     a file that gets one line for each counted operation: number, name, path, and "wrong"
 *                             where it is made to go wrong
 *   LEADWRIGHT_FAULTS         "at kind lasting": see arm()
 *
 * A program that is to live through many faults arms the next one by opening "/leadwright-faults/at kind lasting",
 * which is no file; that begins the count and the log anew.
 *
 * Built by the tests: gcc -shared -fPIC -O1 -o faults.so faults.c -ldl
 */
#define _GNU_SOURCE
#include <dlfcn.h>
#include <errno.h>
#include <fcntl.h>
#include <signal.h>
#include <stdarg.h>
#include <stdatomic.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <sys/statfs.h>
#include <sys/syscall.h>
#include <sys/uio.h>
#include <unistd.h>

#define CONTROL "/leadwright-faults/"
#define FILES 4096

/*
 * "short" writes half and says so; "full" writes half once and has no room from then on; "stop" asks the program to end;
 * "kill-mid" kills it with half written. The first two and the last are about writes, and do nothing to anything else.
 */
enum kind { FAIL, SHORT, FULL, STOP, KILL_BEFORE, KILL_MID, KILL_AFTER };

static const char *below = NULL;
static int log_file = -1;
static atomic_int counted = 0;
static atomic_int writing_full = 0;
static int fault_at = 0; /* counted from 1; 0 for none */
static int fault_errno = 0;
static enum kind fault_kind = FAIL;
static int lasting = 0;
/* Which open files lie below the folder, and under what path. */
static char *paths[FILES];

/* The system itself, past everything that stands here. */
static long (*raw)(long, ...) = NULL;

static void arm(const char *text) {
  char kind[32] = "";
  fault_at = 0;
  if (sscanf(text, "%d %31s %d", &fault_at, kind, &lasting) < 3) fault_at = 0;
  fault_errno = atoi(kind);
  fault_kind = !strcmp(kind, "short") ? SHORT
    : !strcmp(kind, "full") ? FULL
    : !strcmp(kind, "stop") ? STOP
    : !strcmp(kind, "kill-before") ? KILL_BEFORE
    : !strcmp(kind, "kill-mid") ? KILL_MID
    : !strcmp(kind, "kill-after") ? KILL_AFTER
    : FAIL;
  atomic_store(&counted, 0);
  atomic_store(&writing_full, 0);
  if (log_file >= 0) raw(SYS_ftruncate, log_file, 0L);
}

__attribute__((constructor)) static void begin(void) {
  const char *log = getenv("LEADWRIGHT_FAULTS_LOG");
  const char *first = getenv("LEADWRIGHT_FAULTS");
  raw = (long (*)(long, ...))dlsym(RTLD_NEXT, "syscall");
  below = getenv("LEADWRIGHT_FAULTS_BELOW");
  if (log) log_file = (int)raw(SYS_openat, AT_FDCWD, log, O_WRONLY | O_CREAT | O_APPEND | O_CLOEXEC, 0666);
  arm(first ? first : "");
}

static int is_ours(const char *path) {
  size_t length = below ? strlen(below) : 0;
  return length > 0 && path && !strncmp(path, below, length) && (path[length] == '/' || path[length] == 0);
}

static const char *path_of(int file) {
  return file >= 0 && file < FILES ? paths[file] : NULL;
}

static void remember(int file, const char *path) {
  if (file < 0 || file >= FILES) return;
  free(paths[file]);
  paths[file] = path ? strdup(path) : NULL;
}

static void die(void) {
  raw(SYS_kill, getpid(), SIGKILL);
  for (;;) pause();
}

static int is_about(const char *name) {
  int writes_alone = fault_kind == SHORT || fault_kind == FULL || fault_kind == KILL_MID;
  return !writes_alone || !strcmp(name, "write");
}

/* Counts one operation; whether it is to go wrong. The process may end here. */
static int goes_wrong(const char *name, const char *path) {
  char line[4400];
  int number = atomic_fetch_add(&counted, 1) + 1;
  int wrong = fault_at > 0 && number >= fault_at && (number == fault_at || lasting) && is_about(name);
  int length = snprintf(line, sizeof line, "%d\t%s\t%s%s\n", number, name, path, wrong ? "\twrong" : "");
  if (log_file >= 0) raw(SYS_write, log_file, line, (size_t)length);
  if (!wrong) return 0;
  if (fault_kind == KILL_BEFORE) die();
  if (fault_kind == STOP) raw(SYS_kill, getpid(), SIGTERM);
  return fault_kind != STOP;
}

/* For an operation that either happens or does not: 1 where the caller has to give -1 back. */
static int fails(int wrong) {
  if (!wrong || fault_kind != FAIL) return 0;
  errno = fault_errno;
  return 1;
}

static void after(int wrong) {
  if (wrong && (fault_kind == KILL_AFTER || fault_kind == KILL_MID)) die();
}

#define REAL(type, name, ...) \
  static type (*real)(__VA_ARGS__) = NULL; \
  if (!real) real = (type(*)(__VA_ARGS__))dlsym(RTLD_NEXT, name)

/* Around an operation that is known by a path, or by an open file that has one; nothing is done to others. */
#define AROUND_NAMED(name, ours, call) \
  do { \
    const char *named = ours; \
    if (!named) return call; \
    int wrong = goes_wrong(name, named); \
    if (fails(wrong)) return -1; \
    int result = call; \
    after(wrong); \
    return result; \
  } while (0)
#define AROUND(name, path, call) AROUND_NAMED(name, is_ours(path) ? path : NULL, call)
#define AROUND_FILE(name, file, call) AROUND_NAMED(name, path_of(file), call)

static int opened(const char *path, int file) {
  if (file >= 0) remember(file, is_ours(path) ? path : NULL);
  return file;
}

static int before_open(const char *path, int flags, int *wrong) {
  *wrong = 0;
  if (path && !strncmp(path, CONTROL, strlen(CONTROL))) {
    arm(path + strlen(CONTROL));
    errno = ENOENT;
    return -1;
  }
  if (!is_ours(path)) return 0;
  *wrong = goes_wrong(flags & O_CREAT ? "create" : "open", path);
  return fails(*wrong) ? -1 : 0;
}

#define OPEN(function, symbol) \
  int function(const char *path, int flags, ...) { \
    REAL(int, symbol, const char *, int, mode_t); \
    va_list more; \
    va_start(more, flags); \
    mode_t mode = flags & (O_CREAT | O_TMPFILE) ? va_arg(more, mode_t) : 0; \
    va_end(more); \
    int wrong; \
    if (before_open(path, flags, &wrong) < 0) return -1; \
    int file = opened(path, real(path, flags, mode)); \
    after(wrong); \
    return file; \
  }
OPEN(open, "open")
OPEN(open64, "open64")

#define OPENAT(function, symbol) \
  int function(int folder, const char *path, int flags, ...) { \
    REAL(int, symbol, int, const char *, int, mode_t); \
    va_list more; \
    va_start(more, flags); \
    mode_t mode = flags & (O_CREAT | O_TMPFILE) ? va_arg(more, mode_t) : 0; \
    va_end(more); \
    int wrong; \
    if (before_open(path, flags, &wrong) < 0) return -1; \
    int file = opened(path, real(folder, path, flags, mode)); \
    after(wrong); \
    return file; \
  }
OPENAT(openat, "openat")
OPENAT(openat64, "openat64")

/* How many bytes of a write get through: -1 fails. */
static ssize_t allowed(const char *path, size_t length, int *wrong) {
  *wrong = goes_wrong("write", path);
  if (!*wrong) return (ssize_t)length;
  switch (fault_kind) {
    case FAIL: errno = fault_errno; return -1;
    case SHORT: case KILL_MID: return (ssize_t)(length + 1) / 2;
    case FULL:
      /* Short once, then no room: a writer that looks only at errors takes the first for a success. */
      if (atomic_fetch_add(&writing_full, 1) == 0) return (ssize_t)(length + 1) / 2;
      errno = ENOSPC;
      return -1;
    default: return (ssize_t)length;
  }
}

ssize_t write(int file, const void *bytes, size_t length) {
  REAL(ssize_t, "write", int, const void *, size_t);
  const char *path = path_of(file);
  if (!path) return real(file, bytes, length);
  int wrong;
  ssize_t part = allowed(path, length, &wrong);
  if (part < 0) return -1;
  ssize_t result = real(file, bytes, (size_t)part);
  after(wrong);
  return result;
}

#define PWRITE(function, symbol, offset_type) \
  ssize_t function(int file, const void *bytes, size_t length, offset_type offset) { \
    REAL(ssize_t, symbol, int, const void *, size_t, offset_type); \
    const char *path = path_of(file); \
    if (!path) return real(file, bytes, length, offset); \
    int wrong; \
    ssize_t part = allowed(path, length, &wrong); \
    if (part < 0) return -1; \
    ssize_t result = real(file, bytes, (size_t)part, offset); \
    after(wrong); \
    return result; \
  }
PWRITE(pwrite, "pwrite", off_t)
PWRITE(pwrite64, "pwrite64", off64_t)

ssize_t writev(int file, const struct iovec *parts, int count) {
  REAL(ssize_t, "writev", int, const struct iovec *, int);
  const char *path = path_of(file);
  if (!path) return real(file, parts, count);
  int wrong;
  size_t length = 0;
  for (int at = 0; at < count; at++) length += parts[at].iov_len;
  ssize_t part = allowed(path, length, &wrong);
  if (part < 0) return -1;
  /* Half of the first part is short enough. */
  ssize_t result = (size_t)part == length ? real(file, parts, count) : write(file, parts[0].iov_base, parts[0].iov_len / 2);
  after(wrong);
  return result;
}

ssize_t read(int file, void *bytes, size_t length) {
  REAL(ssize_t, "read", int, void *, size_t);
  const char *path = path_of(file);
  if (!path) return real(file, bytes, length);
  int wrong = goes_wrong("read", path);
  if (fails(wrong)) return -1;
  ssize_t result = real(file, bytes, length);
  after(wrong);
  return result;
}

int fsync(int file) { REAL(int, "fsync", int); AROUND_FILE("fsync", file, real(file)); }
int fdatasync(int file) { REAL(int, "fdatasync", int); AROUND_FILE("fsync", file, real(file)); }
int fchmod(int file, mode_t mode) { REAL(int, "fchmod", int, mode_t); AROUND_FILE("chmod", file, real(file, mode)); }
int ftruncate(int file, off_t length) { REAL(int, "ftruncate", int, off_t); AROUND_FILE("truncate", file, real(file, length)); }
int ftruncate64(int file, off64_t length) { REAL(int, "ftruncate64", int, off64_t); AROUND_FILE("truncate", file, real(file, length)); }
int rename(const char *from, const char *to) { REAL(int, "rename", const char *, const char *); AROUND("rename", to, real(from, to)); }
int link(const char *from, const char *to) { REAL(int, "link", const char *, const char *); AROUND("link", to, real(from, to)); }
int unlink(const char *path) { REAL(int, "unlink", const char *); AROUND("unlink", path, real(path)); }
int rmdir(const char *path) { REAL(int, "rmdir", const char *); AROUND("rmdir", path, real(path)); }
int mkdir(const char *path, mode_t mode) { REAL(int, "mkdir", const char *, mode_t); AROUND("mkdir", path, real(path, mode)); }
int statfs(const char *path, struct statfs *into) { REAL(int, "statfs", const char *, struct statfs *); AROUND("room", path, real(path, into)); }
int statfs64(const char *path, struct statfs64 *into) { REAL(int, "statfs64", const char *, struct statfs64 *); AROUND("room", path, real(path, into)); }
int chmod(const char *path, mode_t mode) { REAL(int, "chmod", const char *, mode_t); AROUND("chmod", path, real(path, mode)); }

/* A file is closed even where closing says that something went wrong, as Linux does it. */
static int closed(int file, const char *path, int (*really)(int)) {
  int wrong = goes_wrong("close", path);
  remember(file, NULL);
  int result = really(file);
  after(wrong);
  return fails(wrong) ? -1 : result;
}

int close(int file) {
  REAL(int, "close", int);
  const char *path = path_of(file);
  return path ? closed(file, path, real) : real(file);
}

static int close_raw(int file) {
  return (int)raw(SYS_close, file);
}

/* Node closes files and asks for their facts by number, past the C library's own functions. */
long syscall(long number, ...) {
  if (!raw) raw = (long (*)(long, ...))dlsym(RTLD_NEXT, "syscall");
  long a[6];
  va_list more;
  va_start(more, number);
  for (int at = 0; at < 6; at++) a[at] = va_arg(more, long);
  va_end(more);
  if (number == SYS_close && path_of((int)a[0])) return closed((int)a[0], path_of((int)a[0]), close_raw);
  if (number == SYS_statx) {
    const char *named = (const char *)a[1];
    const char *path = named && *named ? named : path_of((int)a[0]);
    if (is_ours(path)) {
      int wrong = goes_wrong("stat", path);
      if (fails(wrong)) return -1;
      long result = raw(number, a[0], a[1], a[2], a[3], a[4], a[5]);
      after(wrong);
      return result;
    }
  }
  return raw(number, a[0], a[1], a[2], a[3], a[4], a[5]);
}
