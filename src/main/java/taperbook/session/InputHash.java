package taperbook.session;

/**
 * Path, hash and length of an input file, without its content.
 *
 * @param path path relative to the project folder, with {@code /}
 * @param sha256 SHA-256 of the content, 64 lower-case hexadecimal digits (FIPS 180-4)
 * @param bytes length of the content
 */
public record InputHash(String path, String sha256, long bytes) {}
