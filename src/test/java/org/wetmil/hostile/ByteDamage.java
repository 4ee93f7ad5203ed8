package org.wetmil.hostile;

import java.util.Arrays;
import java.util.Random;

/** What a bad disk, a broken transfer or a mischief does to the bytes of any file. */
enum ByteDamage {
  BITS {
    @Override
    byte[] to(byte[] file, Random random) {
      for (int i = 0; i <= random.nextInt(8); i++) {
        file[random.nextInt(file.length)] ^= (byte) (1 << random.nextInt(8));
      }
      return file;
    }
  },
  BYTES {
    @Override
    byte[] to(byte[] file, Random random) {
      for (int i = 0; i <= random.nextInt(40); i++) {
        file[random.nextInt(file.length)] = (byte) random.nextInt(256);
      }
      return file;
    }
  },
  CUT {
    @Override
    byte[] to(byte[] file, Random random) {
      return Arrays.copyOf(file, random.nextInt(file.length));
    }
  },
  ZEROS {
    @Override
    byte[] to(byte[] file, Random random) {
      int from = random.nextInt(file.length);
      Arrays.fill(file, from, Math.min(file.length, from + 1 + random.nextInt(600)), (byte) 0);
      return file;
    }
  },
  REPEATED {
    @Override
    byte[] to(byte[] file, Random random) {
      byte[] twice = Arrays.copyOf(file, file.length * 2);
      System.arraycopy(file, 0, twice, file.length, file.length);
      return twice;
    }
  },
  TAIL {
    @Override
    byte[] to(byte[] file, Random random) {
      byte[] more = Arrays.copyOf(file, file.length + 1 + random.nextInt(70_000));
      more[file.length] = (byte) random.nextInt(256);
      return more;
    }
  },
  BEFORE {
    @Override
    byte[] to(byte[] file, Random random) {
      int by = 1 + random.nextInt(500);
      byte[] more = new byte[file.length + by];
      System.arraycopy(file, 0, more, by, file.length);
      return more;
    }
  },
  ENDS {
    /** The directory of a zip file stands at its end, the head of any other at its beginning. */
    @Override
    byte[] to(byte[] file, Random random) {
      int near = Math.min(file.length, 120);
      int at = random.nextInt(near);
      file[random.nextBoolean() ? at : file.length - 1 - at] = (byte) random.nextInt(256);
      return file;
    }
  };

  /** Damages bytes; may change what is given. */
  abstract byte[] to(byte[] file, Random random);
}
