/**
 * The command line. {@link fairboil.reports.cli.Main} parses the words typed and hands each command
 * to its own class.
 */
package fairboil.reports.cli;
