/**
 * The command line: reads options and files, has the engine render, and says what happened. Standard output carries
 * data and help only; problems, progress and summaries go to the standard error stream. Times and frames are as in the
 * engine. Stands at the end of the flow; nothing depends on it.
 *
 * <p>A command is one class: {@link picocli.CommandLine.Command} with a header, a description and examples, {@link
 * org.duskloom.cli.HelpOptions} and perhaps {@link org.duskloom.cli.ShowOperand} mixed in, a {@code Callable} of the
 * exit code, and a line in {@link org.duskloom.cli.Program}.
 */
package org.duskloom.cli;
