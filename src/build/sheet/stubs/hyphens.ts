/** No hyphenation in cells. */
export default {};
