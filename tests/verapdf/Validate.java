import java.io.File;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/** Prints, for each file and each standard, whether veraPDF finds it compliant, and what it breaks. */
public final class Validate {
    public static void main(String[] args) throws Exception {
        VeraGreenfieldFoundryProvider.initialise();
        List<PDFAFlavour> flavours = List.of(PDFAFlavour.PDFUA_1, PDFAFlavour.PDFA_2_A);
        for (String name : args) {
            for (PDFAFlavour flavour : flavours) {
                validate(new File(name), flavour);
            }
        }
    }

    private static void validate(File file, PDFAFlavour flavour) throws Exception {
        try (PDFAParser parser = Foundries.defaultInstance().createParser(file, flavour)) {
            PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false);
            ValidationResult result = validator.validate(parser);
            System.out.println((result.isCompliant() ? "pass" : "fail") + "\t" + flavour.getId() + "\t" + file);
            Map<String, String> broken = new TreeMap<>();
            for (TestAssertion assertion : result.getTestAssertions()) {
                if (assertion.getStatus() == TestAssertion.Status.FAILED) {
                    broken.putIfAbsent(assertion.getRuleId().getClause() + "-" + assertion.getRuleId().getTestNumber(),
                        assertion.getMessage() + " at " + assertion.getLocation().getContext());
                }
            }
            broken.forEach((rule, why) -> System.out.println("\t" + rule + "\t" + why));
        }
    }
}
