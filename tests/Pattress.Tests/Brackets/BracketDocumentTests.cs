using System.Text.Json;
using Pattress.Brackets;

namespace Pattress.Tests.Brackets;

public class BracketDocumentTests
{
    private const string Outline = """ "outline_mm":[[-30,0],[30,0],[30,100],[-30,100]] """;
    private const string Fixings = """ "fixings":[{"x_mm":-20,"y_mm":80,"stiffness_n_per_mm":800,"gap_mm":0},{"x_mm":20,"y_mm":80,"stiffness_n_per_mm":800,"gap_mm":0}] """;
    private const string Load = """ "bed_n_per_mm3":2.0,"load":{"n_n":0,"mx_nmm":0,"my_nmm":9000,"vx_n":0,"vy_n":-100,"tz_nmm":0} """;

    /// <summary>Case C1 of statics_cases.json as a document.</summary>
    [Fact]
    public void Worked_case_as_a_document()
    {
        var answer = BracketDocument.Answer($"{{{Outline},{Fixings},{Load}}}");
        Assert.Empty(answer.Problems);
        using var json = JsonDocument.Parse(BracketDocument.Json(answer.Value!));
        var root = json.RootElement;
        Assert.Equal(65.7704617, root.GetProperty("fixings")[0].GetProperty("tension_n").GetDouble(), 0.5e-7);
        Assert.Equal(50, root.GetProperty("fixings")[1].GetProperty("shear_n").GetDouble(), 1e-9);
        Assert.Equal(131.540923, root.GetProperty("contact_n").GetDouble(), 0.5e-6);
        Assert.Equal(2084.44102, root.GetProperty("contact_area_mm2").GetDouble(), 0.5e-5);
        Assert.Equal(0.126212181, root.GetProperty("pressure_max_mpa").GetDouble(), 0.5e-9);
        Assert.InRange(root.GetProperty("residual").GetDouble(), 0, 1e-10);
    }

    [Fact]
    public void Units_as_text_and_private_fields_are_taken()
    {
        var answer = BracketDocument.Answer("""{"x_note":"mine","outline_mm":[["-3 cm",0],[30,0],[30,"10 cm"],[-30,100],[-30,0]],"fixings":[{"x_mm":0,"y_mm":"80 mm","stiffness_n_per_mm":1600}],"bed_n_per_mm3":2,"load":{"my_nmm":9000,"vy_n":"-0.1 kN"}}""");
        Assert.Empty(answer.Problems);
        Assert.Equal(100, answer.Value!.Fixings[0].Shear.Size, 1e-9);
        Assert.Equal(131.540923, answer.Value.Fixings[0].Tension, 0.5e-6);
    }

    [Fact]
    public void Unknown_stiffness_is_a_range_and_shown_as_assumed()
    {
        var answer = BracketDocument.Answer($$"""{{{Outline}},"fixings":[{"x_mm":-20,"y_mm":80},{"x_mm":20,"y_mm":30}],"load":{"my_nmm":9000} }""");
        Assert.Empty(answer.Problems);
        Assert.Contains(answer.Value!.Assumed, r => r.Code == "fixing_stiffness_assumed");
        Assert.Contains(answer.Value.Assumed, r => r.Code == "bed_stiffness_assumed");
        Assert.All(answer.Value.Fixings, f => Assert.True(f.TensionWorst >= f.Tension));
        Assert.True(answer.Value.PressureWorst > answer.Value.Contact.PressureMax);
    }

    [Fact]
    public void No_load_still_gives_a_report()
    {
        var answer = BracketDocument.Answer($$"""{{{Outline}},{{Fixings}},"load":{} }""");
        Assert.Empty(answer.Problems);
        Assert.All(answer.Value!.Fixings, f => Assert.Equal(0, f.Tension));
    }

    public static TheoryData<string, string, string> Bad => new()
    {
        { "", "not_json", "$" },
        { "[]", "wrong_type", "$" },
        { $$"""{{{Outline}},{{Fixings}},{{Load}},"bed":2}""", "unknown_field", "$.bed" },
        { $$"""{{{Outline}},{{Fixings}}}""", "missing_field", "$.load" },
        { $$"""{"outline_mm":[[0,0],[1,1]],{{Fixings}},{{Load}}}""", "list_too_short", "$.outline_mm" },
        { $$"""{"outline_mm":[[0,0],[50,50],[100,100]],{{Fixings}},{{Load}}}""", "outline_without_area", "$.outline_mm" },
        { $$"""{"outline_mm":[[0,0],[100,100],[100,0],[0,100]],{{Fixings}},{{Load}}}""", "outline_without_area", "$.outline_mm" },
        { $$"""{"outline_mm":[[0,0],[100,100],[100,0],[0,90]],{{Fixings}},{{Load}}}""", "outline_crosses_itself", "$.outline_mm" },
        { $$"""{"outline_mm":[[0,0],[1e308,0],[0,100]],{{Fixings}},{{Load}}}""", "absurd_number", "$.outline_mm[1][0]" },
        { $$"""{{{Outline}},"holes_mm":[[[100,100],[110,100],[110,110]]],{{Fixings}},{{Load}}}""", "hole_outside_outline", "$.holes_mm[0]" },
        { $$"""{{{Outline}},"further_outlines_mm":[[[0,50],[60,50],[60,60]]],{{Fixings}},{{Load}}}""", "outlines_overlap", "$.further_outlines_mm[0]" },
        { $$"""{{{Outline}},"fixings":[{"x_mm":0,"y_mm":80,"stiffness_n_per_mm":-5}],{{Load}}}""", "negative", "$.fixings[0].stiffness_n_per_mm" },
        { $$"""{{{Outline}},"fixings":[{"x_mm":0,"y_mm":80},{"x_mm":0,"y_mm":80}],{{Load}}}""", "fixings_in_one_place", "$.fixings[1]" },
        { $$"""{{{Outline}},"fixings":[{"x_mm":0,"y_mm":80,"gap_mm":-1}],{{Load}}}""", "negative", "$.fixings[0].gap_mm" },
        { $$"""{{{Outline}},"fixings":[{"x_mm":0,"y_mm":80,"stiffness_range_n_per_mm":[900,100]}],{{Load}}}""", "range_reversed", "$.fixings[0].stiffness_range_n_per_mm" },
        { $$"""{{{Outline}},"fixings":[{"x_mm":0,"y_mm":"80 kg"}],{{Load}}}""", "quantity_wrong_unit", "$.fixings[0].y_mm" },
        { $$"""{{{Outline}},{{Fixings}},"load":{"n_n":1e7} }""", "too_big", "$.load.n_n" },
        { $$"""{{{Outline}},"fixings":[],"load":{"n_n":5} }""", "bracket_mechanism", "$.fixings" },
        { $$"""{{{Outline}},"fixings":[{"x_mm":0,"y_mm":120}],"load":{"n_n":50} }""", "bracket_mechanism", "$.fixings" },
        { $$"""{{{Outline}},"fixings":[{"x_mm":0,"y_mm":50,"stiffness_n_per_mm":900,"tension_cap_n":40}],"bed_n_per_mm3":2,"load":{"n_n":50,"my_nmm":2500} }""", "bracket_overloaded", "$.load" },
        { $$"""{{{Outline}},"fixings":[{"x_mm":0,"y_mm":50}],"load":{"tz_nmm":50} }""", "shear_mechanism", "$.load" },
    };

    [Theory]
    [MemberData(nameof(Bad))]
    public void Bad_documents_are_refused_at_their_place(string json, string code, string path)
    {
        var answer = BracketDocument.Answer(json);
        Assert.False(answer.Ok);
        Assert.Null(answer.Value);
        Assert.Contains(answer.Problems, p => p.Code == code && p.Path == path);
    }

    [Fact]
    public void Every_problem_is_reported_at_once()
    {
        var answer = BracketDocument.Answer("""{"outline_mm":[[0,0],[100,0],[0,100]],"fixings":[{"x_mm":"wide","y_mm":10,"colour":1}],"load":{"n_n":true},"extra":0}""");
        Assert.True(answer.Problems.Count >= 4, string.Join("; ", answer.Problems));
    }

    [Fact]
    public void A_fixing_outside_is_said()
    {
        var answer = BracketDocument.Answer($$"""{{{Outline}},"fixings":[{"x_mm":0,"y_mm":120}],"load":{"n_n":5,"my_nmm":5000} }""");
        Assert.Contains(answer.Value!.Cautions, c => c.Code == "fixing_outside_outline");
        // In the document by its number, counted from 1.
        using var json = JsonDocument.Parse(BracketDocument.Json(answer.Value));
        var caution = json.RootElement.GetProperty("cautions")[0];
        Assert.Equal(("fixing_outside_outline", 1), (caution.GetProperty("code").GetString(), caution.GetProperty("values")[0].GetInt32()));
        Assert.False(json.RootElement.GetProperty("assumptions")[0].TryGetProperty("values", out _));
    }

    /// <summary>Each number of the answer is a member of the document: by statics 100 N down on two fixings alike is 50 N down on each, the gap field gives the tension back.</summary>
    [Fact]
    public void Each_number_stands_in_the_document()
    {
        using var json = JsonDocument.Parse(BracketDocument.Json(BracketDocument.Answer($$"""{{{Outline}},"fixings":[{"x_mm":-20,"y_mm":80,"stiffness_range_n_per_mm":[400,800]},{"x_mm":20,"y_mm":80,"stiffness_n_per_mm":800}],{{Load}}}""").Value!));
        var root = json.RootElement;
        var (first, second, gap) = (root.GetProperty("fixings")[0], root.GetProperty("fixings")[1], root.GetProperty("gap"));
        Assert.Equal(50, Math.Abs(first.GetProperty("shear_y_n").GetDouble()), 1e-9);
        Assert.Equal(0, first.GetProperty("shear_x_n").GetDouble(), 1e-9);
        double at(double x, double y) => gap.GetProperty("at_origin_mm").GetDouble() + gap.GetProperty("per_mm_x").GetDouble() * x + gap.GetProperty("per_mm_y").GetDouble() * y;
        Assert.Equal(800 * at(20, 80), second.GetProperty("tension_n").GetDouble(), 1e-6);
        Assert.True(first.GetProperty("tension_worst_n").GetDouble() >= first.GetProperty("tension_n").GetDouble() - 1e-9);
        Assert.True(root.GetProperty("pressure_worst_mpa").GetDouble() >= root.GetProperty("pressure_max_mpa").GetDouble() - 1e-12);
    }

    /// <summary>Sides of an outline that cross, a hole outside it and holes one over the other are said where they stand, the sides counted from 1.</summary>
    [Fact]
    public void Rings_that_cannot_be_are_said_where_they_stand()
    {
        var crossed = BracketDocument.Answer($$"""{"outline_mm":[[0,0],[10,10],[10,0],[0,6]],{{Fixings}},{{Load}}}""").Problems;
        Assert.Contains(crossed, p => p is { Code: "outline_crosses_itself", Value: "sides 1 and 3" });
        var outside = BracketDocument.Answer($$"""{{{Outline}},"holes_mm":[[[40,10],[50,10],[50,20]]],{{Fixings}},{{Load}}}""").Problems;
        Assert.Contains(outside, p => p.Code == "hole_outside_outline");
        var over = BracketDocument.Answer($$"""{{{Outline}},"holes_mm":[[[-10,10],[10,10],[0,30]],[[-5,12],[12,12],[0,40]]],{{Fixings}},{{Load}}}""").Problems;
        Assert.Contains(over, p => p.Code == "holes_overlap");
    }
}
