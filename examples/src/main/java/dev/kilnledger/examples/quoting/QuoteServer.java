package dev.kilnledger.examples.quoting;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import dev.kilnledger.core.document.DocumentLimits;
import dev.kilnledger.core.reading.ByteSource;
import dev.kilnledger.costing.document.JobDesk;
import dev.kilnledger.costing.document.JobReply;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadFactory;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * Answers {@code POST /quote} with a job document by its cost and findings, on this machine only.
 *
 * <p>The status is 200 for an answer, also for a job that will not come out, whose findings say so;
 * 400 for what is no JSON, 422 for a job with problems, all of which are told; 404, 405, 413 and
 * 415 for requests that are not for it, 503 when it has too much to do or a job takes too long, and
 * 500 for what should not happen, without a word of what it was: that is told to the operator
 * alone.
 *
 * <p>A job that takes too long is given up, but computes to its end: the bound on jobs at once is
 * what holds. Before it is put on a network it needs what every service needs: encryption, and to
 * know who asks.
 */
public final class QuoteServer implements AutoCloseable {
  private static final JsonFactory JSON = new JsonFactory();

  /** So much of a request that is too long is taken and thrown away, bytes. */
  private static final int PASSED_OVER = 1 << 20;

  private final Function<byte[], JobReply> desk;
  private final ServerLimits limits;
  private final Consumer<Throwable> operator;
  private final ThreadPoolExecutor computing;
  private final ExecutorService talking;
  private final HttpServer server;

  /**
   * Starts a server.
   *
   * @param port the port on the loopback address; 0 for any that is free
   * @param desk answers the bytes of a job document, for several threads at once
   * @param limits what the server takes on
   * @param operator hears what should not happen
   * @throws IOException if the port is taken
   */
  public QuoteServer(
      int port, Function<byte[], JobReply> desk, ServerLimits limits, Consumer<Throwable> operator)
      throws IOException {
    this.desk = desk;
    this.limits = limits;
    this.operator = operator;
    computing =
        new ThreadPoolExecutor(
            limits.computing(),
            limits.computing(),
            1,
            TimeUnit.MINUTES,
            new ArrayBlockingQueue<>(limits.waiting()),
            daemons("computing"));
    talking =
        Executors.newFixedThreadPool(limits.computing() + limits.waiting() + 2, daemons("talking"));
    server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), port), 0);
    server.setExecutor(talking);
    server.createContext("/", this::answer);
    server.start();
  }

  /**
   * {@return the desk of the standard materials and rules}
   *
   * @param limits the limits of the server, whose size is that of a document too
   */
  public static Function<byte[], JobReply> standardDesk(ServerLimits limits) {
    JobDesk desk = JobDesk.standard();
    DocumentLimits size = DocumentLimits.builder().bytes(limits.bytes()).build();
    return job -> {
      try {
        return desk.answer(ByteSource.of(job), size);
      } catch (IOException e) {
        throw new UncheckedIOException("bytes in memory can always be read", e);
      }
    };
  }

  /**
   * Serves until it is stopped.
   *
   * @param arguments the port
   * @throws IOException if the port is taken
   */
  public static void main(String[] arguments) throws IOException {
    if (arguments.length != 1) {
      throw new IllegalArgumentException(arguments.length + " arguments; accepted is one: a port");
    }
    // seconds after which the JDK's server gives up a client that does not send or take its bytes
    System.setProperty("sun.net.httpserver.maxReqTime", "20");
    System.setProperty("sun.net.httpserver.maxRspTime", "60");
    ServerLimits limits = ServerLimits.standard();
    QuoteServer server =
        new QuoteServer(
            Integer.parseInt(arguments[0]),
            standardDesk(limits),
            limits,
            Throwable::printStackTrace);
    Runtime.getRuntime().addShutdownHook(new Thread(server::close, "stop"));
    System.out.println("POST a job to http://127.0.0.1:" + server.port() + "/quote");
    try {
      Thread.currentThread().join();
    } catch (InterruptedException e) {
      server.close();
    }
  }

  /** {@return the port it listens on} */
  public int port() {
    return server.getAddress().getPort();
  }

  private static ThreadFactory daemons(String name) {
    return work -> {
      Thread thread = new Thread(work, name);
      thread.setDaemon(true);
      return thread;
    };
  }

  private void answer(HttpExchange exchange) throws IOException {
    try (exchange) {
      Response response = response(exchange);
      byte[] body = response.body().getBytes(StandardCharsets.UTF_8);
      exchange.getResponseHeaders().set("Content-Type", "application/json");
      exchange.getResponseHeaders().set("Cache-Control", "no-store");
      exchange.sendResponseHeaders(response.status(), body.length);
      try (OutputStream out = exchange.getResponseBody()) {
        out.write(body);
      }
    }
  }

  private Response response(HttpExchange exchange) throws IOException {
    if (!exchange.getRequestURI().getPath().equals("/quote")) {
      return Response.problem(404, exchange.getRequestURI().getPath() + " is asked for", "/quote");
    }
    if (!exchange.getRequestMethod().equals("POST")) {
      exchange.getResponseHeaders().set("Allow", "POST");
      return Response.problem(405, "the method is " + exchange.getRequestMethod(), "POST");
    }
    String type =
        Optional.ofNullable(exchange.getRequestHeaders().getFirst("Content-Type")).orElse("none");
    if (!type.toLowerCase(Locale.ROOT).matches("application/json *(; *charset=\"?utf-8\"?)?")) {
      return Response.problem(415, "the content type is " + type, "application/json, in UTF-8");
    }
    Optional<byte[]> job = body(exchange);
    return job.isPresent()
        ? computed(job.get())
        : Response.problem(413, "the request is too long", "up to " + limits.bytes() + " bytes");
  }

  /** The request; nothing where it is too long. */
  private Optional<byte[]> body(HttpExchange exchange) throws IOException {
    String length = exchange.getRequestHeaders().getFirst("Content-Length");
    boolean announced =
        length != null && (length.length() > 9 || Integer.parseInt(length) > limits.bytes());
    try (InputStream in = exchange.getRequestBody()) {
      byte[] body = announced ? new byte[0] : in.readNBytes(limits.bytes() + 1);
      if (!announced && body.length <= limits.bytes()) {
        return Optional.of(body);
      }
      // a client that is still sending would lose the answer with the connection
      in.readNBytes(PASSED_OVER);
      return Optional.empty();
    }
  }

  private Response computed(byte[] job) {
    Future<JobReply> reply;
    try {
      reply = computing.submit(() -> desk.apply(job));
    } catch (RejectedExecutionException e) {
      return Response.problem(503, "too many jobs are waiting", "the same request later");
    }
    try {
      JobReply answer = reply.get(limits.patience().toMillis(), TimeUnit.MILLISECONDS);
      return new Response(answer.isAnswered() ? 200 : isJson(job) ? 422 : 400, answer.text());
    } catch (TimeoutException e) {
      reply.cancel(true);
      return Response.problem(
          503,
          "the job was not computed within " + limits.patience().toMillis() + " ms",
          "a simpler job, or the same request later");
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return Response.problem(503, "the server stops", "the same request later");
    } catch (ExecutionException e) {
      operator.accept(e.getCause());
      return Response.problem(500, "the server failed", "nothing that you can change");
    }
  }

  private static boolean isJson(byte[] text) {
    try (JsonParser parser = JSON.createParser(text)) {
      if (parser.nextToken() == null) {
        return false;
      }
      parser.skipChildren();
      return parser.nextToken() == null;
    } catch (JacksonException e) {
      return false;
    } catch (IOException e) {
      throw new UncheckedIOException("bytes in memory can always be read", e);
    }
  }

  /** Stops at once; requests on their way are not answered. */
  @Override
  public void close() {
    server.stop(0);
    talking.shutdownNow();
    computing.shutdownNow();
  }
}
