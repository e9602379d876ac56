using System.Text;
using Pattress.Jobs;
using Pattress.Jobs.Text;
using Pattress.Tests.Jobs;

namespace Pattress.Tests.Faults;

public class MalformedTests
{
    /// <summary>What only the reader can check; every other fault breaks the published schema too.</summary>
    private static readonly string[] BeyondSchema =
    [
        "duplicate_field", "duplicate_id", "unknown_wall", "unknown_fixing", "duplicate_stock", "off_wall", "empty_sweep", "hit_outside_sweep", "solid_beyond_depth",
        "wrong_surface", "brackets_coincide", "brackets_nearly_coincide", "too_few_brackets", "too_many_brackets", "broken_text",
        // The schema asks of a text that it look like a number with a unit; which units there are the reader knows.
        "quantity_wrong_unit", "quantity_too_large",
    ];

    public static TheoryData<string> Ids => [.. MalformedJob.All.Select(m => m.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Each_is_refused_with_its_code_path_and_message(string id)
    {
        var job = MalformedJob.All.Single(m => m.Id == id);
        var problem = Assert.Single(JobReader.Read(job.Text).Problems);
        Assert.Equal((job.Code, job.Path), (problem.Code, problem.Path));
        Assert.Equal(job.Message, Texts.Sentence(problem));
    }

    [Fact]
    public void There_are_enough_of_them()
    {
        Assert.True(MalformedJob.All.Count >= 60);
        Assert.True(MalformedJob.All.Select(m => m.Code).Distinct().Count() >= 25);
        Assert.Empty(JobReader.Read(MalformedJob.Base).Problems);
    }

    [Fact]
    public void What_the_schema_can_see_it_refuses_too()
    {
        var json = MalformedJob.All.Where(m => m.Code is not ("not_json" or "not_a_number" or "too_deep")).ToList();
        Assert.Equal([], json.Where(m => !BeyondSchema.Contains(m.Code) && SampleTests.Fits(m.Text)).Select(m => m.Id));
        Assert.True(SampleTests.Fits(MalformedJob.Base));
    }

    [Fact]
    public void Ten_megabytes_of_brackets_are_refused_at_once()
    {
        var brackets = Encoding.UTF8.GetBytes("""{"pattress_job":1,"walls":[],"fixtures":[{"brackets":[""" + string.Join(",", Enumerable.Repeat("""{"at_mm":[1400,2200]}""", 500_000)));
        Assert.True(brackets.Length > 10_000_000);
        Assert.Equal("too_large", Assert.Single(JobReader.Read(brackets).Problems).Code);
    }

    [Fact]
    public void Nearly_two_megabytes_of_brackets_are_one_problem()
    {
        string list = string.Join(",", Enumerable.Repeat("""{"at_mm":[1400,2200]}""", 85_000));
        string job = $$"""{"pattress_job":1,"walls":[{"id":"w","width_mm":4000,"height_mm":2400}],"fixtures":[{"id":"f","wall":"w","what":"hook","hang_kg":1,"at_mm":[1,1],"brackets":[{{list}}]}]}""";
        var problem = Assert.Single(JobReader.Read(job).Problems);
        Assert.Equal(("list_too_long", "$.fixtures[0].brackets", "a list of 85000"), (problem.Code, problem.Path, problem.Value));
    }

    [Fact]
    public void A_shape_and_a_cross_check_are_reported_together()
    {
        string job = MalformedJob.Base.Replace("\"width_mm\": 1600", "\"width_mm\": -1", StringComparison.Ordinal).Replace("\"wall\": \"w1\", \"what\": \"shelf\"", "\"wall\": \"w7\", \"what\": \"shelf\"", StringComparison.Ordinal);
        Assert.Equal(["negative", "unknown_wall"], JobReader.Read(job).Problems.Select(p => p.Code));
    }
}
