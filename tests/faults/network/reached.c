/*
 * Notes every address that a program asks the system for, under a real program that knows nothing of it: loaded by
 * LD_PRELOAD, it stands between the program and the C library.
 *
 *   LEADWRIGHT_REACHED_LOG   a file that gets one line for each call: name, family, address
 *
 * What is not of this machine is refused as where there is no network, so that nothing leaves the machine even where
 * a program does ask. Programs that it starts are watched too.
 *
 * Built by the tests: gcc -shared -fPIC -O1 -o reached.so reached.c -ldl
 */
#define _GNU_SOURCE
#include <arpa/inet.h>
#include <dlfcn.h>
#include <errno.h>
#include <fcntl.h>
#include <netdb.h>
#include <netinet/in.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/socket.h>
#include <unistd.h>

static int log_file = -1;

__attribute__((constructor)) static void begin(void) {
  const char *log = getenv("LEADWRIGHT_REACHED_LOG");
  if (log) log_file = open(log, O_WRONLY | O_CREAT | O_APPEND | O_CLOEXEC, 0666);
}

/* One write a line: several threads may ask at once. */
static void note(const char *call, const char *family, const char *address) {
  char line[1200];
  int length = snprintf(line, sizeof line, "%s\t%s\t%s\n", call, family, address);
  if (length >= (int)sizeof line) length = sizeof line - 1;
  if (log_file < 0 || write(log_file, line, (size_t)length) != length) abort();
}

/* Notes an address; 0 where it is of this machine. */
static int outside(const char *call, const struct sockaddr *to) {
  char text[INET6_ADDRSTRLEN] = "";
  if (to == NULL) return 0; /* of a socket that is connected already, which was noted then */
  if (to->sa_family == AF_INET) {
    const struct in_addr *at = &((const struct sockaddr_in *)to)->sin_addr;
    note(call, "inet", inet_ntop(AF_INET, at, text, sizeof text));
    return (ntohl(at->s_addr) >> 24) != 127;
  }
  if (to->sa_family == AF_INET6) {
    const struct in6_addr *at = &((const struct sockaddr_in6 *)to)->sin6_addr;
    note(call, "inet6", inet_ntop(AF_INET6, at, text, sizeof text));
    return !IN6_IS_ADDR_LOOPBACK(at);
  }
  if (to->sa_family == AF_UNIX) note(call, "unix", "");
  else {
    snprintf(text, sizeof text, "%d", to->sa_family);
    note(call, "other", text);
  }
  return to->sa_family != AF_UNIX;
}

#define SYSTEM(type, name) ((type)dlsym(RTLD_NEXT, name))
#define REFUSE do { errno = ENETUNREACH; return -1; } while (0)

int connect(int file, const struct sockaddr *to, socklen_t length) {
  if (outside("connect", to)) REFUSE;
  return SYSTEM(int (*)(int, const struct sockaddr *, socklen_t), "connect")(file, to, length);
}

int bind(int file, const struct sockaddr *at, socklen_t length) {
  if (outside("bind", at)) REFUSE;
  return SYSTEM(int (*)(int, const struct sockaddr *, socklen_t), "bind")(file, at, length);
}

ssize_t sendto(int file, const void *bytes, size_t count, int flags, const struct sockaddr *to, socklen_t length) {
  if (outside("sendto", to)) REFUSE;
  return SYSTEM(ssize_t (*)(int, const void *, size_t, int, const struct sockaddr *, socklen_t), "sendto")(
    file, bytes, count, flags, to, length);
}

ssize_t sendmsg(int file, const struct msghdr *message, int flags) {
  if (outside("sendmsg", message->msg_name)) REFUSE;
  return SYSTEM(ssize_t (*)(int, const struct msghdr *, int), "sendmsg")(file, message, flags);
}

int sendmmsg(int file, struct mmsghdr *messages, unsigned int count, int flags) {
  for (unsigned int at = 0; at < count; at++)
    if (outside("sendmmsg", messages[at].msg_hdr.msg_name)) REFUSE;
  return SYSTEM(int (*)(int, struct mmsghdr *, unsigned int, int), "sendmmsg")(file, messages, count, flags);
}

/* Nobody is asked: a name is a host elsewhere until somebody has said what it stands for. */
int getaddrinfo(const char *host, const char *service, const struct addrinfo *hints, struct addrinfo **found) {
  (void)service, (void)hints, (void)found;
  note("getaddrinfo", "name", host ? host : "");
  return EAI_FAIL;
}
