using Pattress.Trials.Documents;

namespace Pattress.Tests.Trials;

/// <summary>What a file says of how its tests loaded their fixings.</summary>
public class TrialColumnTests
{
    private const string Bracket = "kind,load_n,test,arm_mm,plate_width_mm,plate_height_mm,fixing_heights_mm\n";

    private static TrialDocument Read(string csv)
    {
        var read = TrialDocument.Read(csv);
        Assert.Empty(read.Problems);
        return read.Value!;
    }

    /// <summary>By hand: 100 N on 100 mm turn the plate with 10,000 Nmm; one fixing 100 mm above the toe takes at least 10,000 / 100 = 100 N, more the softer the board.</summary>
    [Fact]
    public void A_weight_on_a_stated_arm_and_bracket_becomes_a_pull_with_its_interval()
    {
        var test = Read(Bracket + "a,100,cantilever,100,40,120,100\n").Tests[0];
        Assert.Equal(TestedIn.Cantilever, test.In);
        Assert.True(test.Pull!.LowN >= 100 && test.Pull.LowN < test.Pull.HighN && test.Pull.HighN < 200);
        Assert.Equal(Math.Sqrt(test.Pull.LowN * test.Pull.HighN), test.LoadN, 9);
    }

    [Fact]
    public void Without_arm_or_bracket_the_weight_stays_as_it_is_and_is_called_an_order_of_merit()
    {
        var document = Read(Bracket + "a,100,cantilever,,40,120,100\nb,120,cantilever,,,,\n");
        Assert.All(document.Tests, t => Assert.Equal(TestedIn.OrderOfMerit, t.In));
        Assert.Equal([100, 120], document.Tests.Select(t => t.LoadN));
        Assert.Contains(Analysis.Of(document, new()).Value!.Reasons, r => r.Code == "trial_order_of_merit");
    }

    [Theory]
    [InlineData("kind,load_n,test\na,100,tension\nb,90,shear\n", "trial_mixed_loads")]
    [InlineData("kind,load_n,test\na,100,tension\nb,90,cantilever\n", "trial_mixed_loads")]
    [InlineData("kind,load_n,test\na,100,twist\n", "trial_test_word")]
    [InlineData(Bracket + "a,100,cantilever,100,40,120,130\n", "trial_bad_bracket")]
    [InlineData(Bracket + "a,100,cantilever,-5,40,120,100\n", "trial_bad_bracket")]
    [InlineData("kind,load_kg\na,-3\n", "trial_load_range")]
    [InlineData("kind,load_kg\na,heavy\n", "quantity_no_number")]
    public void What_cannot_be_read_or_does_not_belong_together_is_refused(string csv, string code) =>
        Assert.Contains(TrialDocument.Read(csv).Problems, p => p.Code == code || (code.StartsWith("quantity", StringComparison.Ordinal) && p.Code.StartsWith("quantity", StringComparison.Ordinal)));

    /// <summary>Standard gravity 9.80665 m/s².</summary>
    [Fact]
    public void A_mass_that_was_hung_counts_with_its_weight() => Assert.Equal(54 * 9.80665, Read("kind,load_kg\na,54\n").Tests[0].LoadN, 9);

    [Fact]
    public void Notes_of_the_file_stay_with_it() => Assert.Equal(["INVENTED, no fixing was tested"], Read("# INVENTED, no fixing was tested\nkind,load_n\na,100\n").Notes);
}
