package dev.kilnledger.thermal.chance;

import dev.kilnledger.thermal.profile.Profile;
import dev.kilnledger.thermal.profile.Segment;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * Several courses of temperature at the same times: at all their corners, of which those are left
 * out that lie within a tolerance of the line between the ones kept, in each of the courses. After
 * its end a course stays as it is.
 */
final class CommonTimes {
  private static final double TOLERANCE = 0.05; // K: far below what a thermocouple tells
  private static final double AT_ONCE = 1e-3; // s

  final double[] seconds;
  private final List<double[]> kelvin;

  CommonTimes(List<Profile> courses) {
    List<double[]> times = courses.stream().map(CommonTimes::times).toList();
    List<double[]> corners = courses.stream().map(CommonTimes::corners).toList();
    double[] all = distinct(times);
    List<double[]> values = new ArrayList<>();
    for (int i = 0; i < times.size(); i++) {
      values.add(at(all, times.get(i), corners.get(i)));
    }
    int[] kept = courses.size() == 1 ? every(all.length) : kept(all, values);
    seconds = Arrays.stream(kept).mapToDouble(k -> all[k]).toArray();
    kelvin =
        values.stream()
            .map(course -> Arrays.stream(kept).mapToDouble(k -> course[k]).toArray())
            .toList();
  }

  /** One course at the common times. */
  double[] kelvin(int course) {
    return kelvin.get(course);
  }

  private static double[] times(Profile course) {
    double[] times = new double[course.segments().size() + 1];
    for (int i = 1; i < times.length; i++) {
      times[i] = times[i - 1] + course.segments().get(i - 1).duration().si();
    }
    return times;
  }

  private static double[] corners(Profile course) {
    return DoubleStream.concat(
            DoubleStream.of(course.start().si()),
            course.segments().stream().map(Segment::end).mapToDouble(end -> end.si()))
        .toArray();
  }

  private static double[] distinct(List<double[]> times) {
    double[] all = times.stream().flatMapToDouble(Arrays::stream).sorted().toArray();
    int count = 1;
    for (double time : all) {
      if (time - all[count - 1] > AT_ONCE) {
        all[count++] = time;
      }
    }
    return Arrays.copyOf(all, count);
  }

  /** A course at other times. */
  static double[] at(double[] wanted, double[] times, double[] kelvin) {
    double[] values = new double[wanted.length];
    int line = 1;
    for (int i = 0; i < wanted.length; i++) {
      while (line < times.length - 1 && times[line] < wanted[i]) {
        line++;
      }
      double share = (wanted[i] - times[line - 1]) / (times[line] - times[line - 1]);
      values[i] = kelvin[line - 1] + Math.min(1, share) * (kelvin[line] - kelvin[line - 1]);
    }
    return values;
  }

  /** A course at other times. */
  static double[] at(double[] wanted, Profile course) {
    return at(wanted, times(course), corners(course));
  }

  private static int[] every(int length) {
    return IntStream.range(0, length).toArray();
  }

  private static int[] kept(double[] times, List<double[]> values) {
    int[] kept = new int[times.length];
    int count = 1;
    int anchor = 0;
    double[] steepest = new double[values.size()];
    double[] flattest = new double[values.size()];
    open(steepest, flattest);
    for (int k = 1; k < times.length; k++) {
      if (!fits(times, values, anchor, k, steepest, flattest)) {
        anchor = k - 1;
        kept[count++] = anchor;
        open(steepest, flattest);
      }
      narrow(times, values, anchor, k, steepest, flattest);
    }
    kept[count++] = times.length - 1;
    return Arrays.copyOf(kept, count);
  }

  private static void open(double[] steepest, double[] flattest) {
    Arrays.fill(steepest, Double.POSITIVE_INFINITY);
    Arrays.fill(flattest, Double.NEGATIVE_INFINITY);
  }

  private static double slope(double[] times, double[] course, int anchor, int k) {
    return (course[k] - course[anchor]) / (times[k] - times[anchor]);
  }

  private static boolean fits(
      double[] times,
      List<double[]> values,
      int anchor,
      int k,
      double[] steepest,
      double[] flattest) {
    for (int i = 0; i < steepest.length; i++) {
      double slope = slope(times, values.get(i), anchor, k);
      if (slope > steepest[i] || slope < flattest[i]) {
        return false;
      }
    }
    return true;
  }

  private static void narrow(
      double[] times,
      List<double[]> values,
      int anchor,
      int k,
      double[] steepest,
      double[] flattest) {
    double slack = TOLERANCE / (times[k] - times[anchor]);
    for (int i = 0; i < steepest.length; i++) {
      double slope = slope(times, values.get(i), anchor, k);
      steepest[i] = Math.min(steepest[i], slope + slack);
      flattest[i] = Math.max(flattest[i], slope - slack);
    }
  }
}
