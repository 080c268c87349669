package dev.kilnledger.examples.quoting;

import dev.kilnledger.core.document.CoreDocuments;
import dev.kilnledger.core.reading.InputProblem;
import java.util.List;

/**
 * What goes back: a status of RFC 9110 and a JSON document.
 *
 * @param status the status
 * @param body the document
 */
record Response(int status, String body) {
  /** A request that is not for this server as it stands, told like any other problem. */
  static Response problem(int status, String what, String accepted) {
    return new Response(
        status, CoreDocuments.problems().text(List.of(InputProblem.of("request", what, accepted))));
  }
}
