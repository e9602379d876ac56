using Pattress.Jobs;
using Pattress.Jobs.Text;

namespace Pattress.Tests.Jobs.Text;

/// <summary>A size stands before its kind in a sentence, so that no comma parts them from the wall; in a list the kind comes first.</summary>
public class SizedNameTests
{
    [Theory]
    [InlineData("strap_toggle.medium", "Medium strap toggle in", "strap toggle, medium")]
    [InlineData("wide_wing_plug.long", "Long wide-wing plug in", "wide-wing plug, long")]
    [InlineData("knotting_plug.8x40", "Knotting plug 8 × 40 in", "knotting plug 8 × 40")]
    [InlineData("strap_toggle", "Strap toggle in", "strap toggle")]
    public void Of_a_size(string id, string inSentence, string listed)
    {
        var settings = new Settings();
        Assert.StartsWith(inSentence, Texts.Sentence(new Reason("ready", Said.Name(id), Said.Name("stud_timber.12_5"), Said.Percent(0.5), Said.Percent(0.9)), settings), StringComparison.Ordinal);
        Assert.Equal((listed, listed), (Texts.Name(id), Texts.Sentence(new Reason("draw_name", Said.Name(id)), settings)));
    }
}
