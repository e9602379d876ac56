using System.Text.Json;
using Pattress.Actions.Beams;

namespace Pattress.Tests.Beams;

public class BeamDocumentTests
{
    private const string Supports = """ "supports":[{"at_mm":100,"stiffness_n_per_mm":50},{"at_mm":1100,"stiffness_n_per_mm":35},{"at_mm":2100,"stiffness_n_per_mm":50},{"at_mm":2900,"stiffness_n_per_mm":20}] """;

    /// <summary>The worked rail of statics_cases.json as a document.</summary>
    [Fact]
    public void Worked_rail_as_a_document()
    {
        var answer = BeamDocument.Answer($$"""
            {"length_mm":"3 m","ei_nmm2":1649340000,{{Supports}},
             "loads":[{"kind":"uniform","from_mm":0,"to_mm":3000,"n_per_mm":0.012},{"kind":"uniform","from_mm":0,"to_mm":400,"n_per_mm":0.15},{"kind":"uniform","from_mm":2600,"to_mm":3000,"n_per_mm":0.15}],
             "creep_factor":0.6}
            """);
        Assert.Empty(answer.Problems);
        using var json = JsonDocument.Parse(BeamDocument.Json(answer.Value!));
        var reactions = json.RootElement.GetProperty("reactions_n").EnumerateArray().Select(r => r.GetDouble()).ToArray();
        foreach (var (expected, value) in new[] { 58.129153, 16.75586, 31.847278, 49.267709 }.Zip(reactions)) Assert.Equal(expected, value, 0.6e-6);
        Assert.False(json.RootElement.TryGetProperty("envelope", out _));
        Assert.Equal(1.6 * json.RootElement.GetProperty("deflection_max_mm").GetDouble(), json.RootElement.GetProperty("deflection_long_mm").GetDouble(), 1e-9);
        Assert.True(json.RootElement.GetProperty("moment_min_nmm").GetDouble() < 0);
    }

    [Fact]
    public void Envelope_includes_the_standing_loads()
    {
        var answer = BeamDocument.Answer($$"""
            {"length_mm":3000,"ei_nmm2":1649340000,{{Supports}},"loads":[{"kind":"uniform","from_mm":0,"to_mm":3000,"n_per_mm":0.012}],"moving":{"length_mm":400,"n_per_mm":0.30} }
            """);
        Assert.Empty(answer.Problems);
        using var json = JsonDocument.Parse(BeamDocument.Json(answer.Value!));
        var envelope = json.RootElement.GetProperty("envelope");
        Assert.Equal(110.05819, envelope.GetProperty("max_n")[0].GetDouble(), 0.6e-5);
        Assert.Equal(0, envelope.GetProperty("at_mm")[0].GetDouble(), 1e-9);
        // With the stack where its least is said to be, a standing load of the same size gives that least.
        double least = envelope.GetProperty("min_n")[0].GetDouble(), at = envelope.GetProperty("min_at_mm")[0].GetDouble();
        var there = BeamDocument.Answer(FormattableString.Invariant($$"""{"length_mm":3000,"ei_nmm2":1649340000,{{Supports}},"loads":[{"kind":"uniform","from_mm":0,"to_mm":3000,"n_per_mm":0.012},{"kind":"uniform","from_mm":{{at}},"to_mm":{{at + 400}},"n_per_mm":0.30}]}"""));
        using var standing = JsonDocument.Parse(BeamDocument.Json(there.Value!));
        Assert.Equal(least, standing.RootElement.GetProperty("reactions_n")[0].GetDouble(), 1e-6);
        Assert.Equal(4, envelope.GetProperty("min_n").GetArrayLength());
        Assert.Equal("exact", envelope.GetProperty("method").GetString());
    }

    /// <summary>A single force on one span: its moment is largest at mid span, F L / 4, and 0 at the ends; a patch of 2 mm is that force to 1e-3.</summary>
    [Fact]
    public void Envelope_of_the_moment()
    {
        var answer = BeamDocument.Answer("""{"length_mm":2000,"ei_nmm2":1e9,"supports":[{"at_mm":0},{"at_mm":2000}],"loads":[],"moving":{"length_mm":2,"n_per_mm":50}}""");
        using var json = JsonDocument.Parse(BeamDocument.Json(answer.Value!));
        var envelope = json.RootElement.GetProperty("envelope");
        Assert.Equal(100 * 2000.0 / 4 - 50 * 2 * 2 / 8.0, envelope.GetProperty("moment_max_nmm").GetDouble(), 1e-6);
        Assert.Equal(1000, envelope.GetProperty("moment_max_at_mm").GetDouble(), 0.1);
        Assert.Equal(0, envelope.GetProperty("moment_min_nmm").GetDouble(), 1e-6);
    }

    /// <summary>k_def of EN 1995-1-1 Table 3.2 (from memory): solid timber 0.6 in service class 1, particleboard P4 2.25 and none in class 2.</summary>
    [Theory]
    [InlineData("solid_timber", 1, 0.6)]
    [InlineData("solid_timber", 3, 2.0)]
    [InlineData("particleboard", 1, 2.25)]
    [InlineData("particleboard", 2, null)]
    public void Creep_by_material(string material, int serviceClass, double? factor)
    {
        var answer = BeamDocument.Answer($$"""{"length_mm":800,"ei_nmm2":2e8,"supports":[{"at_mm":0},{"at_mm":800}],"loads":[{"kind":"uniform","from_mm":0,"to_mm":800,"n_per_mm":0.3}],"creep_material":"{{material}}","service_class":{{serviceClass}}}""");
        if (factor is null) { Assert.Equal("creep_not_covered", answer.Problems.Single().Code); return; }
        Assert.Equal(5 * 0.3 * Math.Pow(800, 4) / (384 * 2e8) * (1 + factor.Value), answer.Value!.DeflectionLong!.Value, 1e-9);
    }

    /// <summary>Statics: a cup at the far end of an overhanging rail lets go, a held one pulls down and is said to.</summary>
    [Fact]
    public void Held_down_and_lifted_supports_are_said()
    {
        const string rest = """ "ei_nmm2":1e9,"length_mm":2500,"loads":[{"kind":"point","at_mm":1000,"n":10},{"kind":"point","at_mm":2500,"n":1}] """;
        var held = BeamDocument.Answer($$"""{{{rest}},"supports":[{"at_mm":0},{"at_mm":500},{"at_mm":2000}]}""");
        Assert.Contains(held.Value!.Cautions, c => c.Code == "support_pulls_down");
        var cups = BeamDocument.Answer($$"""{{{rest}},"supports":[{"at_mm":0,"one_sided":"yes"},{"at_mm":500,"one_sided":"yes"},{"at_mm":2000,"one_sided":"yes"}]}""");
        Assert.Contains(cups.Value!.Cautions, c => c.Code == "support_lifts_off");
        Assert.Equal(0, cups.Value!.Standing.Reactions[0]);
    }

    [Fact]
    public void Where_a_rail_lifts_the_envelope_is_stepped_and_says_so()
    {
        var answer = BeamDocument.Answer("""{"length_mm":2000,"ei_nmm2":1e9,"supports":[{"at_mm":0,"one_sided":"yes"},{"at_mm":1000,"one_sided":"yes"},{"at_mm":2000,"one_sided":"yes"}],"loads":[],"moving":{"length_mm":300,"n_per_mm":0.3}}""");
        Assert.Empty(answer.Problems);
        Assert.False(answer.Value!.Envelope!.Exact);
        Assert.All(answer.Value.Envelope.Reactions, r => Assert.True(r.Min.Value >= 0));
    }

    public static TheoryData<string, string, string> Bad => new()
    {
        { """{"length_mm":0,"ei_nmm2":1e9,"supports":[{"at_mm":0},{"at_mm":0}]}""", "too_small", "$.length_mm" },
        { """{"length_mm":1000,"supports":[{"at_mm":0},{"at_mm":500}]}""", "missing_field", "$.ei_nmm2" },
        { """{"length_mm":1000,"ei_nmm2":1e9,"stretches":[{"length_mm":1000,"ei_nmm2":1e9}],"supports":[{"at_mm":0},{"at_mm":500}]}""", "two_stiffnesses", "$.ei_nmm2" },
        { """{"length_mm":1000,"stretches":[{"length_mm":900,"ei_nmm2":1e9}],"supports":[{"at_mm":0},{"at_mm":500}]}""", "stretches_do_not_add_up", "$.stretches" },
        { """{"length_mm":1000,"ei_nmm2":1e9,"supports":[{"at_mm":0},{"at_mm":1500}]}""", "support_outside_beam", "$.supports[1].at_mm" },
        { """{"length_mm":1000,"ei_nmm2":1e9,"supports":[{"at_mm":500},{"at_mm":500}]}""", "supports_in_one_place", "$.supports[1].at_mm" },
        { """{"length_mm":1000,"ei_nmm2":1e9,"supports":[{"at_mm":0},{"at_mm":500}],"loads":[{"kind":"point","at_mm":1200,"n":1}]}""", "load_outside_beam", "$.loads[0].at_mm" },
        { """{"length_mm":1000,"ei_nmm2":1e9,"supports":[{"at_mm":0},{"at_mm":500}],"loads":[{"kind":"uniform","from_mm":300,"to_mm":200,"n_per_mm":1}]}""", "empty_stretch", "$.loads[0].to_mm" },
        { """{"length_mm":1000,"ei_nmm2":1e9,"supports":[{"at_mm":0},{"at_mm":500}],"loads":[{"kind":"point","at_mm":100,"n_per_mm":1}]}""", "field_of_another_kind", "$.loads[0].n_per_mm" },
        { """{"length_mm":1000,"ei_nmm2":1e9,"supports":[{"at_mm":0},{"at_mm":500}],"loads":[{"kind":"moment","at_mm":100}]}""", "unknown_word", "$.loads[0].kind" },
        { """{"length_mm":1000,"ei_nmm2":1e9,"supports":[{"at_mm":0},{"at_mm":500}],"hinges_mm":[1000]}""", "hinge_outside_beam", "$.hinges_mm[0]" },
        { """{"length_mm":1000,"ei_nmm2":1e9,"supports":[{"at_mm":0},{"at_mm":500}],"moving":{"length_mm":1200,"n_per_mm":1}}""", "moving_longer_than_beam", "$.moving" },
        { """{"length_mm":1000,"ei_nmm2":1e9,"supports":[{"at_mm":0},{"at_mm":500}],"moving_second":{"length_mm":100,"n_per_mm":1}}""", "second_without_first", "$.moving_second" },
        { """{"length_mm":1000,"ei_nmm2":1e9,"supports":[{"at_mm":0}]}""", "beam_mechanism", "$.supports" },
        { """{"length_mm":1000,"ei_nmm2":1e308,"supports":[{"at_mm":0},{"at_mm":500}]}""", "absurd_number", "$.ei_nmm2" },
        { """{"length_mm":1000,"ei_nmm2":1e9,"supports":[{"at_mm":0,"stiffness_range_n_per_mm":[9,1]},{"at_mm":500}]}""", "range_reversed", "$.supports[0].stiffness_range_n_per_mm" },
        { """{"length_mm":1000,"ei_nmm2":1e9,"supports":[{"at_mm":0},{"at_mm":500}],"creep_factor":0.6,"creep_material":"mdf"}""", "two_creeps", "$.creep_factor" },
        { """{"length_mm":NaN}""", "not_a_number", "$.length_mm" },
        { """{"length_mm":1""", "not_json", "$.length_mm" },
    };

    [Theory]
    [MemberData(nameof(Bad))]
    public void Bad_documents_are_refused_at_their_place(string json, string code, string path)
    {
        var answer = BeamDocument.Answer(json);
        Assert.False(answer.Ok);
        Assert.Contains(answer.Problems, p => p.Code == code && p.Path == path);
    }
}
