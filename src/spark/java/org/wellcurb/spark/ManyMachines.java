package org.wellcurb.spark;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.apache.spark.SparkConf;
import org.apache.spark.api.java.JavaRDD;
import org.apache.spark.api.java.JavaSparkContext;
import org.wellcurb.report.ByteText;
import org.wellcurb.report.RulesCsv;
import org.wellcurb.rulepack.PackException;
import org.wellcurb.rulepack.PackLoader;

/**
 * Screens records where they lie, on as many machines as Apache Spark is given, and writes the
 * {@code rules.csv} that one machine would have written: a screening is a function of pack, date
 * and record, and its counts add up in any order.
 *
 * <p>A file of JSON lines ({@code .ndjson}, {@code .jsonl}) is cut anywhere between lines; of a
 * folder, each file is one task.
 */
public final class ManyMachines {
  private ManyMachines() {}

  /** PACK AS_OF RECORDS RULES_CSV; the machines are those of {@code spark.master}. */
  public static void main(String[] arguments) throws IOException, PackException {
    if (arguments.length != 4) {
      throw new IllegalArgumentException("give PACK AS_OF RECORDS RULES_CSV");
    }
    Task task = new Task(arguments[0], LocalDate.parse(arguments[1]));
    SparkConf conf =
        new SparkConf().setAppName("wellcurb").setIfMissing("spark.master", "local[*]");
    try (JavaSparkContext spark = new JavaSparkContext(conf)) {
      Counts counts = counts(spark, task, arguments[2]);
      write(task, counts, Path.of(arguments[3]));
      long screened = counts.tally(PackLoader.load(task.pack())).records();
      System.out.println(
          (screened + counts.setAside())
              + " rows read: "
              + screened
              + " screened, "
              + counts.setAside()
              + " set aside");
    }
  }

  /** Screens all records of a file of JSON lines, or of a folder of files. */
  static Counts counts(JavaSparkContext spark, Task task, String records) {
    boolean isLines = records.endsWith(".ndjson") || records.endsWith(".jsonl");
    int tasks = spark.defaultParallelism() * 2;
    JavaRDD<Counts> parts =
        isLines
            ? spark.textFile(records, tasks).mapPartitions(task::lines)
            : spark.binaryFiles(records, tasks).mapPartitions(task::files);
    return parts.reduce(Counts::plus);
  }

  static void write(Task task, Counts counts, Path rules) throws IOException, PackException {
    ByteText text = new ByteText().put(RulesCsv.HEADER);
    RulesCsv.put(text, counts.tally(PackLoader.load(task.pack())));
    try (OutputStream out = Files.newOutputStream(rules)) {
      text.writeTo(out);
    }
  }
}
