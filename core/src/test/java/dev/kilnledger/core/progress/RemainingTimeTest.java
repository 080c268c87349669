package dev.kilnledger.core.progress;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

class RemainingTimeTest {
  @Test
  void quarterInThirtySecondsLeavesNinety() {
    AtomicLong clock = new AtomicLong(5);
    RemainingTime remaining = new RemainingTime(clock::get);
    assertThat(remaining.estimate()).isEmpty();
    clock.addAndGet(TimeUnit.SECONDS.toNanos(30));
    remaining.at(0.25);
    assertThat(remaining.fraction()).isEqualTo(0.25);
    assertThat(remaining.estimate()).contains(Duration.ofSeconds(90));
    clock.addAndGet(TimeUnit.SECONDS.toNanos(10));
    remaining.at(1);
    assertThat(remaining.estimate()).contains(Duration.ZERO);
  }

  @Test
  void partOfTheWorkIsAStretchOfTheWhole() {
    List<Double> heard = new ArrayList<>();
    Progress part = ((Progress) heard::add).between(0.5, 0.75);
    part.at(0);
    part.at(0.5);
    part.at(1);
    assertThat(heard).containsExactly(0.5, 0.625, 0.75);
  }
}
