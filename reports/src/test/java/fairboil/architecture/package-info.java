/**
 * Tests of the shape of the code, over the classes of all modules: {@link
 * fairboil.architecture.ModulesTest} which way imports run, {@link
 * fairboil.architecture.LibrariesTest} where each library may be used, {@link
 * fairboil.architecture.AmbientTest} what no code may ask of the machine it happens to run on.
 */
package fairboil.architecture;
