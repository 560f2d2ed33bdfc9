/** Reads a study folder on disk into typed values; knows no physics. */
package fairboil.ingest;
