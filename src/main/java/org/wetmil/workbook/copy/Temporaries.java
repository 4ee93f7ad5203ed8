package org.wetmil.workbook.copy;

import java.io.Closeable;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The temporary files of one result in its folder. A locked file stands beside them, for the system
 * takes the lock away when a program ends in whatever manner: what nobody locks was left behind.
 */
final class Temporaries implements Closeable {
  private static final String PREFIX = ".wetmil-";
  private static final String LOCK = ".lock";
  private static final String SUFFIX = ".tmp";

  /** Where no file can be locked, one as old as this was left behind. */
  private static final Duration LEFT_OVER_AFTER = Duration.ofHours(6);

  /** Ours, which must not be looked at: to close a file gives up its lock on some systems. */
  private static final Set<String> HELD = ConcurrentHashMap.newKeySet();

  private final Path folder;
  private final String id = PREFIX + UUID.randomUUID();
  private final List<Path> files = new ArrayList<>();
  private final FileChannel lock;

  /** Begins in a folder, and removes what killed runs left there. */
  Temporaries(Path folder) {
    this.folder = folder;
    HELD.add(id);
    lock = locked();
    // one at a time: two threads of a program that try one lock are refused with a fault
    synchronized (HELD) {
      removeLeftOvers();
    }
  }

  /** Null where files cannot be locked, as on some shares. */
  private FileChannel locked() {
    Path file = folder.resolve(id + LOCK);
    FileChannel channel = null;
    try {
      channel = FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
      // another run may have found it before it was locked, and have taken it for left behind
      if (channel.tryLock() != null && Files.exists(file)) {
        return channel;
      }
      channel.close();
    } catch (IOException e) {
      closeQuietly(channel);
    }
    return null;
  }

  private static void closeQuietly(FileChannel channel) {
    try {
      if (channel != null) {
        channel.close();
      }
    } catch (IOException e) {
      // it serves nobody any more
    }
  }

  /** Names a file; it goes when this is closed. */
  Path next() {
    // Not createTempFile: that makes the file readable by its owner alone, and so the result.
    Path file = folder.resolve(id + "-" + (files.size() + 1) + SUFFIX);
    files.add(file);
    return file;
  }

  private void removeLeftOvers() {
    for (Path other : list(PREFIX + "*" + LOCK)) {
      String name = other.getFileName().toString();
      String owner = name.substring(0, name.length() - LOCK.length());
      if (!HELD.contains(owner)) {
        removeUnlocked(other, owner);
      }
    }
    Instant limit = Instant.now().minus(LEFT_OVER_AFTER);
    for (Path file : list(PREFIX + "*" + SUFFIX)) {
      try {
        if (Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
            && Files.getLastModifiedTime(file).toInstant().isBefore(limit)) {
          Files.deleteIfExists(file);
        }
      } catch (IOException e) {
        // another user's, or gone meanwhile: nothing that keeps us from writing ours
      }
    }
  }

  private void removeUnlocked(Path other, String owner) {
    try (FileChannel channel =
            FileChannel.open(other, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
        FileLock taken = channel.tryLock()) {
      if (taken != null) {
        for (Path file : list(owner + "-*" + SUFFIX)) {
          Files.deleteIfExists(file);
        }
        Files.deleteIfExists(other);
      }
    } catch (IOException e) {
      // as above
    }
  }

  private List<Path> list(String glob) {
    List<Path> found = new ArrayList<>();
    try (DirectoryStream<Path> stream = Files.newDirectoryStream(folder, glob)) {
      stream.forEach(found::add);
    } catch (IOException | DirectoryIteratorException e) {
      // a folder that can be written but not listed; then nothing is removed
    }
    return found;
  }

  @Override
  public void close() throws IOException {
    try {
      for (Path file : files) {
        Files.deleteIfExists(file);
      }
    } finally {
      closeQuietly(lock);
      Files.deleteIfExists(folder.resolve(id + LOCK));
      HELD.remove(id);
    }
  }
}
