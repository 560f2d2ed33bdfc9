/** Works a study out: physics, layout and statistics, with no files, drawing, console or clock. */
package fairboil.analysis;
